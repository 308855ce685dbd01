#include <avahi-client/lookup.h>
#include <avahi-common/strlst.h>

#include <map>
#include <mutex>
#include <tuple>

#include "sync/net/avahi_client.h"
#include "sync/net/dns_sd.h"

namespace weavelog {
namespace {

constexpr std::size_t kMost = 64;

/// A service on one interface, by one protocol: its resolver lives as long as it does, so that changes are heard.
struct Place {
  AvahiIfIndex interface = 0;
  AvahiProtocol protocol = 0;
  std::string name, domain;
  auto operator<=>(const Place&) const = default;
};

}  // namespace

class DnsSdBrowser::Impl : private AvahiConnection {
 public:
  explicit Impl(std::function<void()> on_change) : on_change_(std::move(on_change)) { begin(); }
  ~Impl() override { end(); }

  [[nodiscard]] std::vector<std::pair<NearbyOffer, std::string>> found() const {
    const std::lock_guard guard(mutex_);
    std::vector<std::pair<NearbyOffer, std::string>> out;
    for (const auto& [place, one] : found_) out.push_back(one);
    return out;
  }

 private:
  void ready(AvahiClient* client) override {
    if (browser_ == nullptr)
      browser_ = avahi_service_browser_new(client, AVAHI_IF_UNSPEC, AVAHI_PROTO_UNSPEC, kDnsSdType, nullptr, AvahiLookupFlags{}, &Impl::browsed, this);
  }
  void gone() override {
    for (const auto& [place, resolver] : resolvers_) avahi_service_resolver_free(resolver);
    resolvers_.clear();
    if (browser_ != nullptr) avahi_service_browser_free(browser_);
    browser_ = nullptr;
    bool some = false;
    {
      const std::lock_guard guard(mutex_);
      some = !found_.empty();
      found_.clear();
    }
    if (some && on_change_) on_change_();
  }

  void forget(const Place& place) {
    if (const auto resolver = resolvers_.find(place); resolver != resolvers_.end()) {
      avahi_service_resolver_free(resolver->second);
      resolvers_.erase(resolver);
    }
    put(place, {});
  }
  void put(const Place& place, const std::optional<std::pair<NearbyOffer, std::string>>& one) {
    {
      const std::lock_guard guard(mutex_);
      if (one) {
        found_.insert_or_assign(place, *one);
      } else if (found_.erase(place) == 0) {
        return;
      }
    }
    if (on_change_) on_change_();
  }

  static void browsed(AvahiServiceBrowser*, AvahiIfIndex interface, AvahiProtocol protocol, AvahiBrowserEvent event, const char* name,
                      const char* type, const char* domain, AvahiLookupResultFlags, void* self) {
    auto& here = *static_cast<Impl*>(self);
    if (name == nullptr || type == nullptr || domain == nullptr) return;  // all for now, or a failure that the client tells too
    const Place place{interface, protocol, name, domain};
    if (event == AVAHI_BROWSER_REMOVE) return here.forget(place);
    if (event != AVAHI_BROWSER_NEW || here.resolvers_.contains(place) || here.resolvers_.size() >= kMost) return;
    AvahiServiceResolver* resolver = avahi_service_resolver_new(here.client(), interface, protocol, name, type, domain, AVAHI_PROTO_UNSPEC,
                                                                AvahiLookupFlags{}, &Impl::resolved, self);
    if (resolver != nullptr) here.resolvers_[place] = resolver;
  }

  static void resolved(AvahiServiceResolver*, AvahiIfIndex interface, AvahiProtocol protocol, AvahiResolverEvent event, const char* name,
                       const char*, const char* domain, const char*, const AvahiAddress* address, std::uint16_t port, AvahiStringList* text,
                       AvahiLookupResultFlags, void* self) {
    auto& here = *static_cast<Impl*>(self);
    if (event != AVAHI_RESOLVER_FOUND || address == nullptr || name == nullptr || domain == nullptr) return;
    std::vector<std::string> strings;
    for (AvahiStringList* one = text; one != nullptr; one = avahi_string_list_get_next(one))
      strings.emplace_back(reinterpret_cast<const char*>(avahi_string_list_get_text(one)), avahi_string_list_get_size(one));
    char host[AVAHI_ADDRESS_STR_MAX] = {};
    avahi_address_snprint(host, sizeof host, address);
    const Place place{interface, protocol, name, domain};
    // A link-local IPv6 address means nothing without the name of the interface, which an address in our codes has no place for.
    const auto offer = std::string_view(host).starts_with("fe80:") ? std::nullopt : read_dns_sd_text(strings, name, port);
    here.put(place, offer ? std::optional(std::pair(*offer, std::string(host))) : std::nullopt);
  }

  std::function<void()> on_change_;
  AvahiServiceBrowser* browser_ = nullptr;
  std::map<Place, AvahiServiceResolver*> resolvers_;
  mutable std::mutex mutex_;
  std::map<Place, std::pair<NearbyOffer, std::string>> found_;
};

DnsSdBrowser::DnsSdBrowser(std::function<void()> on_change) : impl_(std::make_unique<Impl>(std::move(on_change))) {}
DnsSdBrowser::~DnsSdBrowser() = default;
std::vector<std::pair<NearbyOffer, std::string>> DnsSdBrowser::found() const { return impl_->found(); }

}  // namespace weavelog
