#pragma once
// What happened in a run, line by line: digested, so that two runs can be compared to the byte, and kept if
// asked.

#include <stdexcept>
#include <string>
#include <vector>

#include "core/base/digest.h"

namespace weavelog::sim {

/// A promise of the product was broken. Thrown from wherever it is seen; ends the run.
struct Violation : std::runtime_error {
  Violation(std::string which, const std::string& text)
      : std::runtime_error(text), invariant(std::move(which)) {}
  std::string invariant;  ///< short and stable: shrinking looks for the same one
};

class Trace {
 public:
  explicit Trace(bool keep) : keep_(keep) {}

  void line(const std::string& text) {
    digester_.add(as_bytes(text));
    digester_.add(as_bytes("\n"));
    if (keep_) lines_.push_back(text);
  }
  /// Digested only: what is too much to read.
  void bytes(ByteView data) { digester_.add(data); }
  [[nodiscard]] bool kept() const { return keep_; }
  [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }
  /// Ends it.
  [[nodiscard]] Digest finish() { return digester_.finish(); }

 private:
  bool keep_;
  Digester digester_;
  std::vector<std::string> lines_;
};

}  // namespace weavelog::sim
