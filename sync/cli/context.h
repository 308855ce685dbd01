#pragma once
// What every command works with: the options that come before it, the device's folder, and how it answers.

#include <boost/json.hpp>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/language.h"
#include "core/desk/event_book.h"
#include "core/desk/player_record.h"
#include "sync/exchange/workplace.h"

namespace weavelog::cli {

namespace json = boost::json;

/// How a command ended; the program's exit code.
enum class Ending : int {
  done = 0,
  fault = 1,         ///< what was wanted could not be done
  wrong_use = 2,     ///< the command line is wrong
  needs_answer = 3,  ///< a person has to answer something first
  not_found = 4,     ///< the player, job, event, file named does not exist
};
/// The ending that a fault means.
[[nodiscard]] Ending ending_of(const Fault& fault);

/// The options before the command.
struct Settings {
  std::string folder;
  std::string device;      ///< "" if not said: the name that the folder keeps
  std::string usual_name;  ///< of a folder that has none yet
  bool json = false;
  std::string language;  ///< "" if not said: then the player's own, or English
};

class Context {
 public:
  explicit Context(Settings settings) : settings_(std::move(settings)) {}

  /// Opens the folder. To be called before everything below. Faults: those of Station::open.
  [[nodiscard]] Outcome<> open();

  [[nodiscard]] const Settings& settings() const { return settings_; }
  [[nodiscard]] Station& station() { return *station_; }
  [[nodiscard]] Ledger& ledger() { return station_->ledger(); }
  [[nodiscard]] Workplace& workplace() { return *workplace_; }
  [[nodiscard]] UnixMs now() { return ledger().wall().now(); }

  /// The host that what is written here is for; none if there never was one.
  [[nodiscard]] std::optional<KnownHost> host();
  /// Goes on for that host, also at the next start. `event` is its event book, if known.
  [[nodiscard]] Outcome<> use_host(const PublicKey& host, const BookId& event);
  /// Goes on at that event, also at the next start.
  [[nodiscard]] Outcome<> use_event(const BookId& event);

  /// The event that this device goes on for; none if there never was one. Consent goes by it.
  [[nodiscard]] BookId room();

  /// The event meant by words on the command line (name or beginning of the book's number); for "" the one in
  /// use, or the only one there is. Faults: not_found, bad_input (several).
  [[nodiscard]] Outcome<BookId> event(const std::string& wanted = {});
  /// The zone in which an event tells its times; UTC if it does not say.
  [[nodiscard]] std::string zone_of(const BookId& event);

  /// The language to speak to a player.
  [[nodiscard]] Language language_for(const Person& person) const;
  /// The language to speak to who types.
  [[nodiscard]] Language language() const;

  /// Prints the document (with --json) or the text.
  void answer(const json::value& document, const std::string& text) const;
  /// The same for a file's content, either to `file`, whole or not at all, or, if that is "", to standard output. Faults: those of
  /// write_open_file().
  [[nodiscard]] Outcome<> deliver(const std::string& content, const std::string& file) const;

 private:
  [[nodiscard]] std::optional<BookId> remembered_event();

  Settings settings_;
  std::unique_ptr<Station> station_;
  std::unique_ptr<Workplace> workplace_;
};

/// Writes to standard output, at once. What goes wrong is kept for output_fault().
void put_out(std::string_view text);
/// Why something that was to be said on standard output is not there; nothing where all is, or where the reader wanted no more of it.
[[nodiscard]] std::optional<Fault> output_fault();

/// One line on standard error; with `as_json` also {"error": {...}} on standard output.
void complain(const Fault& fault, bool as_json);
[[nodiscard]] json::object fault_json(const Fault& fault);

}  // namespace weavelog::cli
