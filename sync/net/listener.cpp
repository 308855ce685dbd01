#include "sync/net/listener.h"

#include <boost/asio/ip/v6_only.hpp>

#include "sync/trust/address.h"

namespace weavelog {
namespace {

namespace asio = boost::asio;
using asio::ip::tcp;
using Error = boost::system::error_code;

tl::unexpected<Fault> listen_fault(const Error& error, const tcp::endpoint& endpoint) {
  const std::string where = Address{endpoint.address().to_string(), endpoint.port()}.text();
  const std::string port = std::to_string(endpoint.port());
  if (error == asio::error::address_in_use) {
    return fail(FaultCode::locked, "port " + port + " is taken by another program", where,
                "stop that program (is a second server running?) or choose another port");
  }
  if (error == asio::error::access_denied) {
    return fail(FaultCode::refused, "port " + port + " may not be used", where, "choose a port from 1024 on");
  }
  if (error == boost::system::errc::address_not_available) {
    return fail(FaultCode::bad_input, "this machine does not have the address", where,
                "choose one of its own addresses, or 0.0.0.0 for all");
  }
  return fail(FaultCode::io, "can't listen (" + error.message() + ")", where, "check the network settings");
}

}  // namespace

Outcome<> listen_on(tcp::acceptor& acceptor, const std::string& address, std::uint16_t port) {
  Error error;
  const auto parsed = asio::ip::make_address(address, error);
  if (error) {
    return fail(FaultCode::bad_input, "\"" + address.substr(0, 60) + "\" is no address of a machine", "address",
                "write an IPv4 or IPv6 address, or 0.0.0.0 for all");
  }
  const tcp::endpoint endpoint(parsed, port);
  acceptor.open(endpoint.protocol(), error);
  if (!error) acceptor.set_option(asio::socket_base::reuse_address(true), error);
  if (!error && parsed.is_v6()) acceptor.set_option(asio::ip::v6_only(!parsed.is_unspecified()), error);
  if (!error) acceptor.bind(endpoint, error);
  if (!error) acceptor.listen(asio::socket_base::max_listen_connections, error);
  if (error) return listen_fault(error, endpoint);
  return {};
}

}  // namespace weavelog
