#include "tests/faults/slow_reader.h"

#include <stdexcept>

#include "tests/bench/room.h"

namespace weavelog::testing {
namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;
using std::chrono::seconds;

PairingCode code_of(const std::string& text) {
  auto code = PairingCode::parse(text);
  if (!code) throw std::runtime_error(code.error().message());
  return *code;
}

}  // namespace

SlowReader::SlowReader(const std::filesystem::path& folder, const std::string& name, const std::string& code)
    : station_(bench::open_station(folder, name)), client_(code_of(code).address.host, code_of(code).address.port, true) {
  if (!client_.secure() || !client_.upgrade()) throw std::runtime_error("the server takes no exchange");
  SessionOptions options;
  options.ledger = &station_->ledger();
  options.devices = &station_->devices();
  options.peers = &station_->peers();
  options.side = Side::guest;
  options.certificate = code_of(code).fingerprint;
  options.secret = code_of(code).secret;
  session_ = std::make_unique<Session>(std::move(options));
  send(session_->start());
  const auto end = Clock::now() + seconds(30);
  // Until the first entries come: more of them are on their way then.
  const auto begun = [&] { return session_->status().state == SessionState::closed || session_->status().entries_received > 0; };
  while (!begun() && Clock::now() < end && client_.take(16384, milliseconds(100)))
    for (auto message = client_.message(); message; message = begun() ? std::nullopt : client_.message()) send(session_->receive(as_bytes(*message)));
  if (session_->status().entries_received == 0) {
    const auto fault = session_->status().fault;
    throw std::runtime_error("a slow reader is given nothing" + (fault ? ": " + fault->message() : std::string()));
  }
}

SlowReader::~SlowReader() {
  enough_ = true;
  if (thread_.joinable()) thread_.join();
}

void SlowReader::send(Session::Frames frames) {
  for (const Bytes& frame : frames) (void)client_.send_message(as_text(frame));
}

void SlowReader::work() {
  while (const auto message = client_.message()) send(session_->receive(as_bytes(*message)));
}

void SlowReader::read_slowly(std::size_t bytes, milliseconds pause) {
  thread_ = std::thread([this, bytes, pause] {
    while (!enough_ && !let_go_) {
      const auto came = client_.take(bytes, pause);
      if (came) {
        read_ += *came;
        std::this_thread::sleep_for(pause);
      } else {
        let_go_ = true;
      }
    }
  });
}

bool SlowReader::hurries(milliseconds time) {
  enough_ = true;
  if (thread_.joinable()) thread_.join();
  const auto end = Clock::now() + time;
  bool there = true;
  while (there && session_->status().state != SessionState::agreed && session_->status().state != SessionState::closed && Clock::now() < end) {
    work();
    there = client_.take(16384, milliseconds(500)).has_value();
    send(session_->tick());
  }
  work();
  return session_->status().state == SessionState::agreed;
}

}  // namespace weavelog::testing
