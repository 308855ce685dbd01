#include "tests/support/server.h"

#include <boost/json.hpp>
#include <stdexcept>
#include <thread>

namespace weavelog::testing {
namespace json = boost::json;

Server::Server(std::filesystem::path folder, const std::vector<std::string>& roles, std::string address)
    : folder_(std::move(folder)), address_(std::move(address)) {
  run(roles);
}

void Server::start(const std::vector<std::string>& roles) {
  // The port of one that was just killed may still be held for a moment.
  for (int attempt = 0; !program_; ++attempt) {
    try {
      run(roles);
    } catch (const std::runtime_error&) {
      if (attempt == 20) throw;
      std::this_thread::sleep_for(std::chrono::milliseconds(200));
    }
  }
}

bool Server::kill() {
  const bool ran = program_.has_value();
  program_.reset();
  return ran;
}

int Server::stop() {
  const int status = program_ ? program_->stop() : 0;
  program_.reset();
  return status;
}

void Server::run(const std::vector<std::string>& roles) {
  std::vector<std::string> command{WEAVELOG_SERVER_PROGRAM,
                                   "--data",
                                   folder_.string(),
                                   "--listen",
                                   address_ + ":" + std::to_string(port_),
                                   "--event",
                                   "Harbour Open",
                                   "--json",
                                   "--quiet",
                                   "--unlisted"};
  for (const auto& role : roles) command.insert(command.end(), {"--invite", role});
  program_.emplace(command);
  const auto next = [&]() -> json::object {
    const auto line = program_->line(std::chrono::seconds(60));
    if (!line) {
      program_.reset();
      throw std::runtime_error("the server did not come up");
    }
    return json::parse(*line).as_object();
  };
  port_ = static_cast<std::uint16_t>(next().at("port").as_int64());
  codes_.clear();
  for (std::size_t i = 0; i < roles.size(); ++i) codes_.emplace_back(next().at("code").as_string());
}

}  // namespace weavelog::testing
