#pragma once
// A real browser without a window, driven over a pipe by the Chrome DevTools Protocol (its stable part, version 1.3): one page.

#include <sys/types.h>

#include <boost/json.hpp>
#include <chrono>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "tests/support/temporary_folder.h"

namespace weavelog::testing {

class Browser {
 public:
  /// Where one is installed here, nothing if none is.
  [[nodiscard]] static std::optional<std::string> installed();

  /// Starts it. Throws std::runtime_error if it does not come up.
  explicit Browser(const std::string& program);
  ~Browser();
  Browser(const Browser&) = delete;
  Browser& operator=(const Browser&) = delete;

  /// Everything in the unit of a style sheet (px).
  void size(int width, int height, bool phone = false);
  void dark(bool dark);
  void language(const std::string& accepted);
  void script(bool on);
  /// Opens an address and waits until it is loaded.
  void open(const std::string& address);
  /// The value of an expression in the page. Throws if it throws.
  [[nodiscard]] boost::json::value value(const std::string& expression);
  [[nodiscard]] std::string text(const std::string& expression);
  /// Waits until the expression is true; false if it is not within the time.
  [[nodiscard]] bool becomes(const std::string& expression, std::chrono::milliseconds time);
  /// What a screen reader is given: "role name", one line each, in order; roles as the browser calls them.
  [[nodiscard]] std::vector<std::string> spoken();
  void screenshot(const std::string& file);
  /// Whatever the browser complained about so far: refused by the policy, failed scripts, failed fetches.
  [[nodiscard]] const std::vector<std::string>& complaints() const { return complaints_; }

 private:
  boost::json::object ask(const std::string& method, boost::json::object parameters = {}, bool of_page = true);
  boost::json::object next();
  void heard(const boost::json::object& event);

  TemporaryFolder home_;
  pid_t pid_ = -1;
  int to_ = -1;
  int from_ = -1;
  std::string pending_;
  std::string session_;
  std::int64_t asked_ = 0;
  bool loaded_ = false;
  std::vector<std::string> complaints_;
};

}  // namespace weavelog::testing
