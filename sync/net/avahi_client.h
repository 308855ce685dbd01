#pragma once
// Private to sync/net: a connection to the Avahi daemon on a thread of its own, made anew when the daemon comes back.

#include <avahi-client/client.h>
#include <avahi-common/error.h>
#include <avahi-common/thread-watch.h>

namespace weavelog {

/// Derived classes call begin() at the end of their constructor and end() at the beginning of their destructor. Everything virtual runs on the
/// poll's thread, or before it has begun; so does whatever the derived class makes of the client.
class AvahiConnection {
 public:
  AvahiConnection() = default;
  virtual ~AvahiConnection() = default;
  AvahiConnection(const AvahiConnection&) = delete;
  AvahiConnection& operator=(const AvahiConnection&) = delete;

 protected:
  void begin() {
    poll_ = avahi_threaded_poll_new();
    if (poll_ == nullptr) return;
    connect();
    avahi_threaded_poll_start(poll_);
  }
  void end() {
    if (poll_ == nullptr) return;
    avahi_threaded_poll_stop(poll_);
    drop();
    avahi_threaded_poll_free(poll_);
    poll_ = nullptr;
  }
  /// Runs `work` while the poll's thread stands still. Not on that thread.
  template <class Work>
  void still(Work work) {
    if (poll_ == nullptr) return;
    avahi_threaded_poll_lock(poll_);
    work();
    avahi_threaded_poll_unlock(poll_);
  }
  /// The daemon is there and takes orders.
  virtual void ready(AvahiClient* client) = 0;
  /// The daemon is not there, or its names are being settled: what was made of the client is to be freed or reset.
  virtual void gone() = 0;
  [[nodiscard]] AvahiClient* client() const { return client_; }

 private:
  void connect() {
    int error = 0;
    // Without a daemon it waits for one; without D-Bus there is none to wait for.
    AvahiClient* made = avahi_client_new(avahi_threaded_poll_get(poll_), AVAHI_CLIENT_NO_FAIL, &AvahiConnection::told, this, &error);
    if (client_ == nullptr) client_ = made;
  }
  void drop() {
    gone();
    if (client_ != nullptr) avahi_client_free(client_);
    client_ = nullptr;
  }
  static void told(AvahiClient* client, AvahiClientState state, void* self) {
    auto& here = *static_cast<AvahiConnection*>(self);
    here.client_ = client;  // the first call comes before avahi_client_new returns
    switch (state) {
      case AVAHI_CLIENT_S_RUNNING:
        here.ready(client);
        break;
      case AVAHI_CLIENT_FAILURE: {
        // Freed here, as the library allows; a daemon that comes back finds a new one.
        const bool lost = avahi_client_errno(client) == AVAHI_ERR_DISCONNECTED;
        here.drop();
        if (lost) here.connect();
        break;
      }
      case AVAHI_CLIENT_S_REGISTERING:
      case AVAHI_CLIENT_S_COLLISION:
      case AVAHI_CLIENT_CONNECTING:
        here.gone();
        break;
    }
  }

  AvahiThreadedPoll* poll_ = nullptr;
  AvahiClient* client_ = nullptr;
};

}  // namespace weavelog
