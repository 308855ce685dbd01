#pragma once
// A bundle on its way to a stick. It is made whole in the device's own folder first, sealed as it will be; from there it is copied
// piece by piece. A stick that is pulled out, or full, in the middle loses nothing: what is there goes on when it is back, also after
// the program was ended. Once it has arrived nothing of it stays behind here but that it was made.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "sync/carry/bundle.h"
#include "sync/exchange/station.h"

namespace weavelog {

/// The one that waits. A further one can be made when it has arrived or was given up.
struct Outgoing {
  BundleId id;
  std::optional<PublicKey> for_device;  ///< see MadeBundle
  std::filesystem::path target;  ///< the file that it becomes
  std::string receiver;          ///< for people
  std::string note;
  bool backup = false;
  UnixMs made = 0;
  std::uint64_t books = 0, entries = 0, bytes = 0;
  std::uint64_t pictures_gone = 0;  ///< see MadeBundle
};

/// Thread-safe as long as one thread at a time makes or brings.
class OutgoingBundle {
 public:
  /// `station` must outlive it. When a book is forgotten a bundle that waits is erased too, since it may hold it.
  explicit OutgoingBundle(Station& station);
  OutgoingBundle(const OutgoingBundle&) = delete;
  OutgoingBundle& operator=(const OutgoingBundle&) = delete;

  /// Nothing if none waits. What a crash left half made is thrown away.
  [[nodiscard]] std::optional<Outgoing> waiting() const;
  /// Makes it, and keeps it until it has arrived. Faults: conflict (another one waits; a file of the name is there), those of
  /// make_bundle, no_space and io of the device's own disk; then nothing waits.
  [[nodiscard]] Outcome<Outgoing> make(const BundleWish& wish, const std::string& receiver, const std::filesystem::path& target);
  /// Copies what is not there yet, and gives the file its name. `go_on` is called with the bytes that have arrived; false stops. Faults:
  /// not_found (none waits; the folder is not there), conflict (another file has the name now; the very
  /// same one, given its name before this device could note it, has arrived), no_space, refused, io: each leaves all as
  /// it is, to go on.
  [[nodiscard]] Outcome<Outgoing> bring(const std::function<bool(std::uint64_t bytes)>& go_on = {});
  /// Another place for it. What has come at the first one is taken away if it can be.
  [[nodiscard]] Outcome<> bring_to(const std::filesystem::path& target);
  /// Thrown away, with what has come of it.
  [[nodiscard]] Outcome<> give_up();

 private:
  [[nodiscard]] std::filesystem::path file(const BundleId& id) const;
  [[nodiscard]] Outcome<> keep(const std::optional<Outgoing>& one);
  /// What was kept last, whether or not its file is there.
  [[nodiscard]] std::optional<Outgoing> kept() const;

  Station& station_;
  std::filesystem::path folder_;
};

/// `folder`/`name`.weavelog, with a number behind the name where a file has it.
[[nodiscard]] std::filesystem::path free_name(const std::filesystem::path& folder, const std::string& name);

}  // namespace weavelog
