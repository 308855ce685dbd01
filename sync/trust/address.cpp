#include "sync/trust/address.h"

#include <algorithm>
#include <charconv>

namespace weavelog {
namespace {

tl::unexpected<Fault> wrong(std::string what) {
  return fail(FaultCode::bad_input, std::move(what), "address",
              "write it like 192.168.1.20:26110 or desk.local");
}

bool is_host_letter(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '.' || c == '-' ||
         c == '_';
}

/// Hexadecimal groups, and after '%' the name of a network interface.
bool is_ipv6_letter(char c) {
  return is_host_letter(c) || c == ':' || c == '%';
}

}  // namespace

std::string Address::text() const {
  const bool ipv6 = host.find(':') != std::string::npos;
  return (ipv6 ? "[" + host + "]" : host) + ":" + std::to_string(port);
}

Outcome<Address> Address::parse(std::string_view text, bool listening) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  if (text.empty()) return wrong("there is no address");
  if (text.size() > 262) return wrong("the address is far too long");
  Address out;
  std::string_view port;
  bool has_port = false;
  bool ipv6 = false;
  if (text.front() == '[') {
    const auto end = text.find(']');
    if (end == std::string_view::npos) return wrong("the closing bracket is missing");
    ipv6 = true;
    out.host = text.substr(1, end - 1);
    text.remove_prefix(end + 1);
    if (!text.empty() && text.front() != ':')
      return wrong("after the bracket only a colon and a port can follow");
    has_port = !text.empty();
    if (has_port) port = text.substr(1);
  } else if (std::count(text.begin(), text.end(), ':') > 1) {
    ipv6 = true;
    out.host = text;
  } else {
    const auto colon = text.find(':');
    out.host = text.substr(0, colon);
    has_port = colon != std::string_view::npos;
    if (has_port) port = text.substr(colon + 1);
  }
  if (out.host.empty()) return wrong("there is no name before the port");
  if (ipv6 && out.host.find(':') == std::string::npos) return wrong("in brackets only an IPv6 address can stand");
  if (!std::all_of(out.host.begin(), out.host.end(), ipv6 ? is_ipv6_letter : is_host_letter)) {
    return wrong("there is a letter that no address has");
  }
  if (has_port) {
    const auto [end, error] = std::from_chars(port.data(), port.data() + port.size(), out.port);
    if (error != std::errc{} || end != port.data() + port.size() || (out.port == 0 && !listening)) {
      return wrong("the port is a number from 1 to 65535");
    }
  }
  return out;
}

}  // namespace weavelog
