#pragma once
// DNS-SD (RFC 6763) beside our own "who is near", where the system has it: through the Avahi daemon, over D-Bus. It reaches what broadcasts
// do not (other subnets with a reflector, IPv6), and other programs of a network see who is there. Without a daemon, or without D-Bus, nothing
// is published and nothing found, and nobody is told; a daemon that comes, goes or starts anew later is followed.
//
// Service type _weavelog._tcp; instance: the device's name, another one where two are called alike; TXT: txtvers=1,
// key=, cert= (64 hexadecimal digits each), name=, event=. What is found is
// a hint, as every answer is (nearby_datagram.h).

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "sync/net/nearby_datagram.h"

namespace weavelog {

inline constexpr const char* kDnsSdType = "_weavelog._tcp";

/// The TXT record's strings for an offer, and back; nothing where they are not of this version or hold names that are not fit to be shown.
[[nodiscard]] std::vector<std::string> dns_sd_text(const NearbyOffer& offer);
[[nodiscard]] std::optional<NearbyOffer> read_dns_sd_text(const std::vector<std::string>& text, const std::string& name, std::uint16_t port);

/// The instance name for a device's: at most 63 bytes, whole characters.
[[nodiscard]] std::string dns_sd_instance(const std::string& name);

/// Publishes a host for as long as it exists, on a thread of its own.
class DnsSdPublisher {
 public:
  explicit DnsSdPublisher(NearbyOffer offer);
  ~DnsSdPublisher();
  DnsSdPublisher(const DnsSdPublisher&) = delete;
  DnsSdPublisher& operator=(const DnsSdPublisher&) = delete;

  /// The event's name from now on. Any thread.
  void set_event(const std::string& event);
  /// The daemon has it. Any thread.
  [[nodiscard]] bool published() const;

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

/// Looks for hosts as long as it exists, on a thread of its own.
class DnsSdBrowser {
 public:
  /// `on_change` is called on its thread.
  explicit DnsSdBrowser(std::function<void()> on_change = {});
  ~DnsSdBrowser();
  DnsSdBrowser(const DnsSdBrowser&) = delete;
  DnsSdBrowser& operator=(const DnsSdBrowser&) = delete;

  /// Who is there now, with an address each; one offer may have several. At most 64. Any thread.
  [[nodiscard]] std::vector<std::pair<NearbyOffer, std::string>> found() const;

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace weavelog
