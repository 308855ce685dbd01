#include <avahi-client/publish.h>
#include <avahi-common/alternative.h>
#include <avahi-common/malloc.h>
#include <avahi-common/strlst.h>

#include <atomic>

#include "sync/net/avahi_client.h"
#include "sync/net/dns_sd.h"

namespace weavelog {

class DnsSdPublisher::Impl : private AvahiConnection {
 public:
  explicit Impl(NearbyOffer offer) : offer_(std::move(offer)), name_(dns_sd_instance(offer_.name)) { begin(); }
  ~Impl() override { end(); }

  void set_event(const std::string& event) {
    if (offer_.event == event) return;
    still([&] {
      offer_.event = event;
      if (group_ == nullptr || !added_) return;
      AvahiStringList* text = record();
      (void)avahi_entry_group_update_service_txt_strlst(group_, AVAHI_IF_UNSPEC, AVAHI_PROTO_UNSPEC, AvahiPublishFlags{}, name_.c_str(), kDnsSdType,
                                                        nullptr, text);
      avahi_string_list_free(text);
    });
  }
  [[nodiscard]] bool published() const { return published_; }

 private:
  void ready(AvahiClient* client) override {
    if (group_ == nullptr) group_ = avahi_entry_group_new(client, &Impl::told, this);
    if (group_ != nullptr && !added_) add();
  }
  void gone() override {
    // The group goes with its client.
    if (group_ != nullptr) avahi_entry_group_free(group_);
    group_ = nullptr;
    added_ = false;
    published_ = false;
  }

  void add() {
    AvahiStringList* text = record();
    int done = AVAHI_ERR_COLLISION;
    for (int tries = 0; tries < 20 && done == AVAHI_ERR_COLLISION; ++tries) {
      if (tries > 0) take_another_name();
      done = avahi_entry_group_add_service_strlst(group_, AVAHI_IF_UNSPEC, AVAHI_PROTO_UNSPEC, AvahiPublishFlags{}, name_.c_str(), kDnsSdType, nullptr,
                                                  nullptr, offer_.port, text);
    }
    avahi_string_list_free(text);
    added_ = done == 0 && avahi_entry_group_commit(group_) == 0;
  }
  /// Another device is called so: "Desk" becomes "Desk #2" for the network. The key in the record stays what it is known by.
  void take_another_name() {
    char* next = avahi_alternative_service_name(name_.c_str());
    name_ = next;
    avahi_free(next);
  }
  [[nodiscard]] AvahiStringList* record() const {
    AvahiStringList* text = nullptr;
    for (const std::string& one : dns_sd_text(offer_)) text = avahi_string_list_add(text, one.c_str());
    return text;
  }
  static void told(AvahiEntryGroup* group, AvahiEntryGroupState state, void* self) {
    auto& here = *static_cast<Impl*>(self);
    here.published_ = state == AVAHI_ENTRY_GROUP_ESTABLISHED;
    if (state != AVAHI_ENTRY_GROUP_COLLISION) return;
    here.group_ = group;
    (void)avahi_entry_group_reset(group);
    here.take_another_name();
    here.add();
  }

  NearbyOffer offer_;
  std::string name_;
  AvahiEntryGroup* group_ = nullptr;
  bool added_ = false;
  std::atomic<bool> published_{false};
};

DnsSdPublisher::DnsSdPublisher(NearbyOffer offer) : impl_(std::make_unique<Impl>(std::move(offer))) {}
DnsSdPublisher::~DnsSdPublisher() = default;
void DnsSdPublisher::set_event(const std::string& event) { impl_->set_event(event); }
bool DnsSdPublisher::published() const { return impl_->published(); }

}  // namespace weavelog
