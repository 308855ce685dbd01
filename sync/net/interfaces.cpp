#include "sync/net/interfaces.h"

#include <ifaddrs.h>
#include <net/if.h>
#include <netinet/in.h>

#include <cstring>
#include <memory>

namespace weavelog {
namespace {

boost::asio::ip::address_v4 address_of(const sockaddr* held) {
  sockaddr_in ipv4{};
  std::memcpy(&ipv4, held, sizeof ipv4);  // not every sockaddr is aligned as this one
  return boost::asio::ip::address_v4(ntohl(ipv4.sin_addr.s_addr));
}

}  // namespace

std::vector<Interface> up_interfaces() {
  ifaddrs* first = nullptr;
  if (getifaddrs(&first) != 0) return {};
  const std::unique_ptr<ifaddrs, decltype(&freeifaddrs)> held(first, &freeifaddrs);
  std::vector<Interface> out;
  for (const ifaddrs* one = first; one != nullptr; one = one->ifa_next) {
    if (one->ifa_addr == nullptr || one->ifa_addr->sa_family != AF_INET || (one->ifa_flags & IFF_UP) == 0)
      continue;
    Interface found{address_of(one->ifa_addr), {}};
    if ((one->ifa_flags & IFF_BROADCAST) != 0 && one->ifa_broadaddr != nullptr)
      found.broadcast = address_of(one->ifa_broadaddr);
    out.push_back(found);
  }
  return out;
}

}  // namespace weavelog
