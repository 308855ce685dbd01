#include "tests/browser/browser.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <thread>

namespace weavelog::testing {
namespace {

namespace json = boost::json;
using Clock = std::chrono::steady_clock;
constexpr std::chrono::seconds kPatience{60};

/// RFC 4648, without checking: what the browser sends is right.
std::string from_base64(std::string_view text) {
  std::string out;
  unsigned held = 0;
  int bits = 0;
  for (const char c : text) {
    int value = -1;
    if (c >= 'A' && c <= 'Z') value = c - 'A';
    if (c >= 'a' && c <= 'z') value = c - 'a' + 26;
    if (c >= '0' && c <= '9') value = c - '0' + 52;
    if (c == '+') value = 62;
    if (c == '/') value = 63;
    if (value < 0) break;
    held = held << 6 | static_cast<unsigned>(value);
    if ((bits += 6) < 8) continue;
    bits -= 8;
    out += static_cast<char>(held >> bits & 0xff);
  }
  return out;
}

}  // namespace

std::optional<std::string> Browser::installed() {
  for (const char* program : {"/usr/bin/chromium-headless-shell", "/usr/bin/chromium"})
    if (::access(program, X_OK) == 0) return program;
  return std::nullopt;
}

Browser::Browser(const std::string& program) {
  int in[2], out[2];
  if (::pipe2(in, O_CLOEXEC) != 0 || ::pipe2(out, O_CLOEXEC) != 0) throw std::runtime_error("no pipe");
  // The protocol has its place at descriptors 3 and 4; first out of the way of each other.
  const int theirs_in = ::fcntl(in[0], F_DUPFD_CLOEXEC, 10), theirs_out = ::fcntl(out[1], F_DUPFD_CLOEXEC, 10);
  std::vector<std::string> words{program, "--headless", "--remote-debugging-pipe", "--user-data-dir=" + (home_ / "profile").string(), "--disable-gpu",
                                 "--disable-dev-shm-usage", "--no-first-run", "--hide-scrollbars", "--force-color-profile=srgb"};
  if (::geteuid() == 0) words.emplace_back("--no-sandbox");  // it refuses to run as root with it
  words.emplace_back("about:blank");
  std::vector<char*> arguments;
  for (auto& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  const std::string home = home_.path().string(), log = (home_ / "log").string();
  pid_ = ::fork();
  if (pid_ < 0) throw std::runtime_error("no child");
  if (pid_ == 0) {
    ::setpgid(0, 0);  // it has children of its own, which end with it
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);
    ::setenv("HOME", home.c_str(), 1);
    const int sink = ::open(log.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0600);
    ::dup2(sink, 1);
    ::dup2(sink, 2);
    ::dup2(theirs_in, 3);
    ::dup2(theirs_out, 4);
    ::execv(arguments[0], arguments.data());
    ::_exit(127);
  }
  for (const int end : {in[0], out[1], theirs_in, theirs_out}) ::close(end);
  to_ = in[1];
  from_ = out[0];
  const auto target = ask("Target.createTarget", {{"url", "about:blank"}}, false);
  session_ = std::string(ask("Target.attachToTarget", {{"targetId", target.at("targetId")}, {"flatten", true}}, false).at("sessionId").as_string());
  for (const char* part : {"Page.enable", "Runtime.enable", "Log.enable"}) (void)ask(part);
}

Browser::~Browser() {
  ::close(to_);
  ::close(from_);
  ::kill(-pid_, SIGKILL);
  ::kill(pid_, SIGKILL);
  ::waitpid(pid_, nullptr, 0);
}

json::object Browser::next() {
  const auto end = Clock::now() + kPatience;
  for (;;) {
    if (const auto at = pending_.find('\0'); at != std::string::npos) {
      const json::value message = json::parse(std::string_view(pending_).substr(0, at));
      pending_.erase(0, at + 1);
      return message.as_object();
    }
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now()).count();
    pollfd wait{from_, POLLIN, 0};
    if (left <= 0 || ::poll(&wait, 1, static_cast<int>(left)) <= 0) throw std::runtime_error("the browser says nothing");
    char buffer[65536];
    const auto n = ::read(from_, buffer, sizeof buffer);
    if (n <= 0) {
      std::ifstream log(home_ / "log");
      throw std::runtime_error("the browser ended: " + std::string(std::istreambuf_iterator<char>(log), {}).substr(0, 2000));
    }
    pending_.append(buffer, static_cast<std::size_t>(n));
  }
}

void Browser::heard(const json::object& event) {
  const auto* method = event.if_contains("method");
  if (method == nullptr) return;
  if (*method == "Page.loadEventFired") loaded_ = true;
  if (*method == "Log.entryAdded" || *method == "Runtime.exceptionThrown") complaints_.push_back(json::serialize(event.at("params")));
}

json::object Browser::ask(const std::string& method, json::object parameters, bool of_page) {
  const std::int64_t number = ++asked_;
  json::object message{{"id", number}, {"method", method}, {"params", std::move(parameters)}};
  if (of_page) message["sessionId"] = session_;
  std::string bytes = json::serialize(message);
  bytes += '\0';
  for (std::size_t sent = 0; sent < bytes.size();) {
    const auto n = ::write(to_, bytes.data() + sent, bytes.size() - sent);
    if (n <= 0) throw std::runtime_error("the browser takes nothing");
    sent += static_cast<std::size_t>(n);
  }
  for (;;) {
    const json::object answer = next();
    const auto* id = answer.if_contains("id");
    if (id == nullptr) {
      heard(answer);
    } else if (*id == number) {
      if (const auto* error = answer.if_contains("error")) throw std::runtime_error(method + ": " + json::serialize(*error));
      return answer.at("result").as_object();
    }
  }
}

void Browser::size(int width, int height, bool phone) {
  (void)ask("Emulation.setDeviceMetricsOverride", {{"width", width}, {"height", height}, {"deviceScaleFactor", 1}, {"mobile", phone}});
}
void Browser::dark(bool dark) {
  json::array features;
  features.push_back(json::object{{"name", "prefers-color-scheme"}, {"value", dark ? "dark" : "light"}});
  (void)ask("Emulation.setEmulatedMedia", {{"features", std::move(features)}});
}
void Browser::language(const std::string& accepted) {
  (void)ask("Emulation.setUserAgentOverride", {{"userAgent", "Weavelog test"}, {"acceptLanguage", accepted}});
}
void Browser::script(bool on) { (void)ask("Emulation.setScriptExecutionDisabled", {{"value", !on}}); }

void Browser::open(const std::string& address) {
  loaded_ = false;
  const auto went = ask("Page.navigate", {{"url", address}});
  if (const auto* error = went.if_contains("errorText")) throw std::runtime_error(address + ": " + json::serialize(*error));
  while (!loaded_) heard(next());
}

json::value Browser::value(const std::string& expression) {
  const auto result = ask("Runtime.evaluate", {{"expression", expression}, {"returnByValue", true}, {"awaitPromise", true}});
  if (const auto* error = result.if_contains("exceptionDetails")) throw std::runtime_error(expression + ": " + json::serialize(*error));
  const auto& held = result.at("result").as_object();
  const auto* value = held.if_contains("value");
  return value == nullptr ? json::value() : *value;
}

std::string Browser::text(const std::string& expression) {
  const json::value held = value(expression);
  return held.is_string() ? std::string(held.get_string()) : json::serialize(held);
}

bool Browser::becomes(const std::string& expression, std::chrono::milliseconds time) {
  for (const auto end = Clock::now() + time; Clock::now() < end; std::this_thread::sleep_for(std::chrono::milliseconds(50)))
    if (value(expression) == json::value(true)) return true;
  return false;
}

std::vector<std::string> Browser::spoken() {
  std::vector<std::string> out;
  const auto text = [](const json::value& node, const char* part) {
    const auto* found = node.as_object().if_contains(part);
    return found != nullptr && found->at("value").is_string() ? std::string(found->at("value").get_string()) : std::string();
  };
  const json::object tree = ask("Accessibility.getFullAXTree");
  for (const auto& node : tree.at("nodes").as_array()) {
    if (node.at("ignored").as_bool()) continue;
    const std::string name = text(node, "name");
    out.push_back(text(node, "role") + (name.empty() ? "" : " " + name));
  }
  return out;
}

void Browser::screenshot(const std::string& file) {
  const auto shot = ask("Page.captureScreenshot", {{"format", "png"}});
  std::ofstream(file, std::ios::binary) << from_base64(shot.at("data").as_string());
}

}  // namespace weavelog::testing
