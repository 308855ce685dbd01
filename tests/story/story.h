#pragma once
// The main job from one event to the next, played with the real programs: three events, two of them with a server, five tablets, files, TLS on
// loopback. Each step first looks whether it is done already, as a person does after a crash, so a process may be killed at any
// moment and the story still ends the same.

#include <boost/json.hpp>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "tests/support/process.h"

namespace weavelog::testing {

struct StoryOptions {
  std::filesystem::path programs;          ///< the build folder, with sync/server and sync/cli below it
  std::filesystem::path folder;            ///< all devices live below it
  std::optional<unsigned> kill_with_seed;  ///< SIGKILL at random moments
  std::function<void(const std::string&)> tell = [](const std::string&) {};
};

/// What the end of the story is; a play with killed processes must give the same.
struct StoryEnd {
  std::vector<std::string> tensions;  ///< of the player's jobs, newest first, "mains / crosses"
  std::vector<std::string> stages;    ///< of the same jobs
  std::string read_back;              ///< of the last drop-off
  std::size_t open_questions = 0;
  std::vector<std::string> at_the_ridge{};  ///< how the third event's list is known: bands, in its order
  int killed = 0;                     ///< processes that were killed on the way
  bool operator==(const StoryEnd& other) const {
    return tensions == other.tensions && stages == other.stages && read_back == other.read_back && open_questions == other.open_questions &&
           at_the_ridge == other.at_the_ridge;
  }
};

/// Plays one event's room: a server and its address, killed and started again at will.
class EventServer {
 public:
  EventServer(std::filesystem::path program, std::filesystem::path folder, std::string name, std::string event);
  /// Starts it; gives the pairing codes for the roles asked for.
  std::vector<std::string> start(const std::vector<std::string>& invite = {});
  void kill() { process_.reset(); }
  /// SIGTERM; its exit code.
  int stop();
  [[nodiscard]] bool runs() const { return process_ != nullptr; }

 private:
  std::filesystem::path program_, folder_;
  std::string name_, event_;
  std::string port_ = "0";
  std::unique_ptr<Running> process_;
};

/// Throws std::runtime_error, with what was said on the way, if a step can't be brought to its end.
class Story {
 public:
  explicit Story(StoryOptions options);
  StoryEnd play();

 private:
  using Words = std::vector<std::string>;
  struct Tablet {
    std::string folder;
    std::string name;
  };

  void harbour_opens();
  void first_drop_off();
  void two_answers();
  void strung_offline();
  void lakeside_opens();
  void same_as_last_time();
  void two_more_at_harbour();
  void withdrawn_and_lost();
  void third_event();
  void first_time_at_harbour(const std::string& family, const std::string& given, const std::string& country, const std::string& year);

  boost::json::value ask(const Tablet& tablet, Words words, const std::string& input = {}, std::vector<int> fine = {0});
  void act(const Tablet& tablet, Words words, const std::string& input = {});
  void until(const std::string& what, const std::function<bool()>& done, const std::function<void()>& action);
  void pair(const Tablet& tablet, EventServer& server, const std::string& code);
  std::string exchange(const Tablet& tablet, EventServer& server);
  std::size_t jobs_at(const Tablet& tablet, const std::string& stage);
  boost::json::array history(const Tablet& tablet);
  bool knows(const Tablet& tablet, const std::string& name);
  std::string consent_of(const Tablet& tablet, const std::string& name);
  std::string band_at_ridge(const std::string& given);
  [[nodiscard]] std::string path(const std::string& name) const;
  std::string file(const std::string& name, const std::string& content);

  StoryOptions options_;
  std::mt19937 random_;
  int killed_ = 0;
  std::string last_words_;
  EventServer harbour_, lakeside_;
  Tablet head_{"head", "Head of Harbour"}, desk_{"desk", "Harbour desk tablet"}, stringer_{"stringer", "Travelling stringer"},
      second_head_{"lakeside-head", "Head of Lakeside"}, ridge_{"ridge", "Colleague at the Ridge"};
  std::string read_back_, zarinas_card_;
  std::vector<std::string> at_the_ridge_;
};

}  // namespace weavelog::testing
