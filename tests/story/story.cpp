#include "tests/story/story.h"

#include <algorithm>
#include <chrono>
#include <fstream>
#include <stdexcept>
#include <thread>

#include "tests/story/story_json.h"

namespace weavelog::testing {
namespace {

namespace json = boost::json;
using namespace std::chrono_literals;

// Invented people and places. The second list spells the player's name as a printer without accents would.
constexpr const char* kHarbourEntries =
    "family_name,given_name,native_name,country,birth_year,seed,entry,draw\n"
    "Vargelín,Odile,,FRA,2001,3,direct,women singles\n"
    "Środziak,Halina,,POL,1999,1,direct,women singles\n"
    "Ōnuma,Tsukiko,大沼月子,JPN,2003,,qualifier,women singles\n"
    "Ветрова,Зарина,,KAZ,2000,5,direct,women singles\n"
    "الراجحية,سلمى,,OMA,2004,,wild card,women singles\n";
constexpr const char* kBrokenEntries =
    "family_name,given_name,country,birth_year\n"
    "Nightingrove,Tess,GBR,1998\n"
    "Farrowby,Ann,GBR,ninety-eight\n";
constexpr const char* kPrices =
    "service,amount,currency\n"
    "labour,18.00,EUR\n"
    "rush,8.50,EUR\n";
constexpr const char* kLakesideEntries =
    "family_name;given_name;country;birth_year;seed\n"
    "VARGELIN;Odile;FRA;2001;2\n"
    "MARWOOD;Phillippa;NZL;1997;4\n";

constexpr const char* kFirstTime = R"json({
  "player": {"family_name": "Vargelín", "given_name": "Odile", "country": "FRA", "birth_year": 2001, "hand": "left",
             "language": "fr", "tension_unit": "kg"},
  "note": "dampeners are in the bag",
  "agreed": {"mains_string": "Tarnbrook Silk", "mains_gauge": "1.25 mm", "mains_supply": "reel", "mains_owner": "player",
             "crosses_string": "Tarnbrook Cord", "crosses_gauge": "1.20 mm", "crosses_supply": "reel", "crosses_owner": "room",
             "mains_tension": "25 kg", "crosses_tension": "24 kg", "mains_prestretch": "5 %", "pieces": 2, "knots": 4,
             "racket_stencil": "heron", "racket_ink": "white", "string_stencil": "wave", "string_ink": "black",
             "dampener": "round", "note": "straighten carefully at the throat"},
  "rackets": ["1", "2", "3", "4"]
})json";

/// The one object or array that a command answers with.
json::value parsed(const std::string& text) {
  boost::system::error_code error;
  json::value value = json::parse(text, error);
  if (error) throw std::runtime_error("no JSON: " + text);
  return value;
}

std::string quantity_at(const json::value& value, const char* name) {
  const auto* object = value.if_object();
  const auto* found = object ? object->if_contains(name) : nullptr;
  if (found == nullptr || !found->is_object()) return found && found->is_string() ? text_at(value, name) : "";
  return text_at(*found, "amount") + " " + text_at(*found, "unit");
}

}  // namespace

// ------------------------------------------------------------------------------------------------ the server

EventServer::EventServer(std::filesystem::path program, std::filesystem::path folder, std::string name, std::string event)
    : program_(std::move(program)), folder_(std::move(folder)), name_(std::move(name)), event_(std::move(event)) {}

std::vector<std::string> EventServer::start(const std::vector<std::string>& invite) {
  std::vector<std::string> command{program_,  "--data", folder_, "--name",     name_, "--event", event_,
                                   "--listen", "127.0.0.1:" + port_, "--currency", "EUR", "--json",  "--quiet"};
  for (const auto& role : invite) {
    command.emplace_back("--invite");
    command.push_back(role);
  }
  process_.reset();
  process_ = std::make_unique<Running>(command);
  const auto listening = process_->line();
  if (!listening) throw std::runtime_error("the event server " + name_ + " does not start");
  port_ = std::to_string(parsed(*listening).as_object().at("port").to_number<int>());
  std::vector<std::string> codes;
  for (std::size_t i = 0; i < invite.size(); ++i) {
    const auto line = process_->line();
    if (!line) throw std::runtime_error("the event server " + name_ + " gives no code");
    codes.push_back(text_at(parsed(*line), "code"));
  }
  return codes;
}

int EventServer::stop() {
  const int code = process_ ? process_->stop() : 0;
  process_.reset();
  return code;
}

// ------------------------------------------------------------------------------------------------ commands

Story::Story(StoryOptions options)
    : options_(std::move(options)),
      random_(options_.kill_with_seed.value_or(0)),
      harbour_(options_.programs / "sync/server/weavelog-server", options_.folder / "harbour-server", "Harbour server", "Harbour Open"),
      lakeside_(options_.programs / "sync/server/weavelog-server", options_.folder / "lakeside-server", "Lakeside server",
                "Lakeside Masters") {}

/// A look or a question: never killed. `fine` are the exit codes that are an answer.
json::value Story::ask(const Tablet& tablet, Words words, const std::string& input, std::vector<int> fine) {
  Words command{(options_.programs / "sync/cli/weavelog-cli").string(), "--data", (options_.folder / tablet.folder).string(), "--device",
                tablet.name, "--json"};
  command.insert(command.end(), words.begin(), words.end());
  const Finished finished = run_program(command, input);
  last_words_ = finished.err;
  if (std::find(fine.begin(), fine.end(), finished.status) == fine.end()) {
    std::string said;
    for (const auto& word : words) said += word + " ";
    throw std::runtime_error(tablet.name + ": " + said + "ended with " + std::to_string(finished.status) + ": " + finished.err + finished.out);
  }
  return parsed(finished.out);
}

/// A deed: may be killed on the way.
void Story::act(const Tablet& tablet, Words words, const std::string& input) {
  Words command{(options_.programs / "sync/cli/weavelog-cli").string(), "--data", (options_.folder / tablet.folder).string(), "--device",
                tablet.name, "--json"};
  command.insert(command.end(), words.begin(), words.end());
  std::optional<std::chrono::milliseconds> kill;
  if (options_.kill_with_seed && random_() % 3 != 0) kill = std::chrono::milliseconds(random_() % 80);
  const Finished finished = run_program(command, input, kill);
  last_words_ = finished.err;
  if (finished.status == 128 + 9) ++killed_;
}

void Story::until(const std::string& what, const std::function<bool()>& done, const std::function<void()>& action) {
  for (int tries = 0; tries < 60; ++tries) {
    if (done()) return;
    action();
  }
  throw std::runtime_error(what + " never came to its end; the last words: " + last_words_);
}

void Story::pair(const Tablet& tablet, EventServer& server, const std::string& code) {
  const std::string name = &server == &harbour_ ? "Harbour server" : "Lakeside server";
  const std::string event = &server == &harbour_ ? "Harbour Open" : "Lakeside Masters";
  const auto listed = [&](const char* command, const std::string& wanted) {
    const json::value rows = ask(tablet, {command});
    return std::any_of(rows.as_array().begin(), rows.as_array().end(),
                       [&](const json::value& row) { return text_at(row, "name") == wanted; });
  };
  // Cut off after the two knew each other, but before the event's book was across: an exchange brings the rest.
  until(tablet.name + " pairs", [&] {
    if (!server.runs()) server.start();
    return listed("hosts", name) && listed("events", event);
  }, [&] {
    if (listed("hosts", name)) act(tablet, {"exchange", "--host", name});
    else act(tablet, {"pair", code});
  });
}

/// Until both agree; the words that both show. In a story with killed processes the server may die in the middle.
std::string Story::exchange(const Tablet& tablet, EventServer& server) {
  std::string words;
  const std::string name = &server == &harbour_ ? "Harbour server" : "Lakeside server";
  until(tablet.name + " exchanges", [&] { return !words.empty(); }, [&] {
    if (!server.runs()) server.start();
    if (options_.kill_with_seed && random_() % 2 == 0) {
      const auto moment = std::chrono::milliseconds(random_() % 120);
      std::thread killer([&] {
        std::this_thread::sleep_for(moment);
        server.kill();
      });
      act(tablet, {"exchange", "--host", name, "--seconds", "2"});
      killer.join();
      ++killed_;
      return;
    }
    const json::value answer = ask(tablet, {"exchange", "--host", name}, {}, {0, 1});
    words = text_at(answer, "words");
  });
  return words;
}

/// Empty while the tablet does not know her.
json::array Story::history(const Tablet& tablet) {
  const json::value jobs = ask(tablet, {"history", "Vargelín Odile"}, {}, {0, 4});
  return jobs.is_array() ? jobs.as_array() : json::array();
}

std::size_t Story::jobs_at(const Tablet& tablet, const std::string& stage) {
  std::size_t count = 0;
  for (const json::value& job : history(tablet))
    if (text_at(job, "stage") == stage) ++count;
  return count;
}

std::string Story::path(const std::string& name) const { return (options_.folder / name).string(); }

std::string Story::file(const std::string& name, const std::string& content) {
  std::filesystem::create_directories(options_.folder);
  std::ofstream(path(name), std::ios::binary) << content;
  return path(name);
}

// ------------------------------------------------------------------------------------------------ the story

void Story::harbour_opens() {
  options_.tell("Harbour Open: the event server starts; the head of the room, the desk and a stringer pair with it by its codes.");
  const auto codes = harbour_.start({"head", "desk", "stringer"});
  pair(head_, harbour_, codes.at(0));

  options_.tell("The head imports an entry list and a price list. A list with a broken row is named with line and column, and nothing of it comes in.");
  const json::value refused = ask(head_, {"import", "entries", file("broken.csv", kBrokenEntries)}, {}, {1, 3});
  const std::string complaint = json::serialize(refused) + last_words_;
  if (complaint.find("birth_year") == std::string::npos) throw std::runtime_error("the broken row is not named: " + complaint);
  const auto entries = [&](const Tablet& tablet) {
    const json::value event = ask(tablet, {"export", "event"});
    return event.as_object().at("entries").as_array().size();
  };
  until("the import", [&] { return entries(head_) == 5; }, [&] { act(head_, {"import", "entries", file("entries.csv", kHarbourEntries)}); });
  until("the prices", [&] { return ask(head_, {"export", "event"}).as_object().at("prices").as_array().size() == 2; },
        [&] { act(head_, {"import", "prices", file("prices.csv", kPrices)}); });
  exchange(head_, harbour_);
  pair(desk_, harbour_, codes.at(1));
  pair(stringer_, harbour_, codes.at(2));
  exchange(desk_, harbour_);
  if (entries(desk_) != 5) throw std::runtime_error("the desk has not got the entry list");
}

void Story::first_drop_off() {
  options_.tell("Odile Vargelín hands over four rackets. Nobody here has seen her: the desk asks everything, reads it back in French, she confirms.");
  const json::value shown = ask(desk_, {"drop-off", "--stdin"}, kFirstTime);
  options_.tell(text_at(shown, "read_back"));
  until("the first drop-off", [&] { return history(desk_).size() == 4; },
        [&] { act(desk_, {"drop-off", "--stdin", "--confirm", "--ready-by", "18:00"}, kFirstTime); });
  until("the consent", [&] {
    const json::value player = ask(desk_, {"find", "Vargelín"}).as_array().at(0);
    return text_at(player, "consent") == "events_entered";
  }, [&] { act(desk_, {"consent", "Vargelín", "events_entered", "--confirm"}); });
  exchange(desk_, harbour_);
  exchange(stringer_, harbour_);
  if (history(stringer_).size() != 4) throw std::runtime_error("the stringer has not got the four jobs");
}

void Story::two_answers() {
  options_.tell("The stringer's tablet, offline since, notes 24 kg for the mains; the desk, meanwhile, 26 kg. Both come together.");
  const auto tension = [&](const Tablet& tablet, const std::string& wanted) {
    return json::serialize(ask(tablet, {"show", "Vargelín"}).as_object().at("setups")).find("\"amount\":\"" + wanted + "\"") != std::string::npos;
  };
  until("the stringer's note", [&] { return tension(stringer_, "24.5"); }, [&] { act(stringer_, {"setup", "Vargelín", "--mains", "24.5kg"}); });
  until("the desk's note", [&] { return tension(desk_, "26"); }, [&] { act(desk_, {"setup", "Vargelín", "--mains", "26kg"}); });
  exchange(stringer_, harbour_);
  exchange(desk_, harbour_);
  exchange(stringer_, harbour_);
  for (const Tablet* tablet : {&desk_, &stringer_}) {
    const json::value questions = ask(*tablet, {"questions", "Vargelín"}, {}, {3});
    const auto& answers = questions.as_array().at(0).as_object().at("answers").as_array();
    if (answers.size() != 2) throw std::runtime_error("the open question does not show both answers: " + json::serialize(questions));
    for (const json::value& answer : answers) {
      if (text_at(answer, "device").empty() || text_at(answer, "at").empty()) throw std::runtime_error("an answer without who or when");
      if (tablet == &desk_) options_.tell("  " + text_at(answer, "value") + ", " + text_at(answer, "device") + ", " + text_at(answer, "event") + ", " + text_at(answer, "at"));
    }
  }
  options_.tell("The desk asks her: 25 kg it is. All three agree again, by the same words on their screens.");
  until("the answer", [&] { return ask(desk_, {"questions", "Vargelín"}, {}, {0, 3}).as_array().empty(); },
        [&] { act(desk_, {"answer", "Vargelín", "1", "25kg"}); });
  exchange(desk_, harbour_);
  const std::string stringers = exchange(stringer_, harbour_);
  const std::string desks = exchange(desk_, harbour_);
  options_.tell("  " + desks);
  if (desks != stringers) throw std::runtime_error("desk and stringer show different words: " + desks + ", " + stringers);
  if (!ask(stringer_, {"questions"}, {}, {0, 3}).as_array().empty()) throw std::runtime_error("the question is still open at the stringer's");
}

void Story::strung_offline() {
  options_.tell("The network is down. The four rackets go through their stages on the stringer's tablet.");
  harbour_.kill();
  for (const char* stage : {"inspected", "cut_out", "on_machine", "strung", "checked", "stencilled", "ready"}) {
    for (const json::value& job : history(stringer_)) {
      const std::string number = text_at(job, "job");
      const auto there = [&] {
        for (const json::value& now : history(stringer_))
          if (text_at(now, "job") == number) return text_at(now, "stage") == stage;
        return false;
      };
      until(std::string("the stage ") + stage, there, [&] { act(stringer_, {"stage", number, stage}); });
    }
  }
  if (jobs_at(desk_, "ready") != 0) throw std::runtime_error("the desk knows what it can't know");
  options_.tell("The network is back: the board at the desk follows.");
  harbour_.start();
  exchange(stringer_, harbour_);
  exchange(desk_, harbour_);
  if (jobs_at(desk_, "ready") != 4) throw std::runtime_error("the desk's board does not show four rackets ready");
  if (const int code = harbour_.stop(); code != 0) throw std::runtime_error("the server did not stop in order: " + std::to_string(code));
}

void Story::lakeside_opens() {
  options_.tell("Weeks later, Lakeside Masters: another server that knows nobody. The stringer pairs, matches the entry list, ticks who goes across.");
  const auto codes = lakeside_.start({"head", "stringer"});
  pair(second_head_, lakeside_, codes.at(0));
  until("the second import", [&] { return ask(second_head_, {"export", "event"}).as_object().at("entries").as_array().size() == 2; },
        [&] { act(second_head_, {"import", "entries", file("lakeside.csv", kLakesideEntries)}); });
  exchange(second_head_, lakeside_);
  pair(stringer_, lakeside_, codes.at(1));
  exchange(stringer_, lakeside_);
  const json::value nobody = ask(second_head_, {"find", "Vargelín"}, {}, {0, 4});
  if (nobody.is_array() && !nobody.as_array().empty()) throw std::runtime_error("the second server knows somebody whom nobody ticked");

  const json::value arrival = ask(stringer_, {"arrival", "--event", "Lakeside Masters"});
  std::string band;
  for (const json::value& entry : arrival.as_object().at("entries").as_array())
    if (text_at(entry, "family_name") == "VARGELIN") band = text_at(entry, "band");
  options_.tell("  on the entry list as VARGELIN Odile: " + band);
  if (band != "known" && band != "likely") throw std::runtime_error("she is not found on the entry list: " + json::serialize(arrival));
  act(stringer_, {"hosts", "--use", "Lakeside server"});
  static_cast<void>(ask(stringer_, {"hosts", "--use", "Lakeside server"}));
  static_cast<void>(ask(stringer_, {"events", "--use", "Lakeside Masters"}));
  static_cast<void>(ask(stringer_, {"tick", "Vargelín"}));
  exchange(stringer_, lakeside_);
  exchange(second_head_, lakeside_);
  if (history(second_head_).size() != 4) throw std::runtime_error("her history has not come across");
}

void Story::same_as_last_time() {
  options_.tell("She walks up: same as last time, three rackets, the mains one kilo less. Old and new are shown, read back in French, confirmed.");
  const Words wish{"same", "Vargelín", "--rackets", "3", "--mains", "-1kg", "--ready-by", "16:30"};
  const json::value shown = ask(stringer_, wish);
  read_back_ = text_at(shown, "read_back");
  options_.tell(read_back_);
  Words confirmed = wish;
  confirmed.emplace_back("--confirm");
  until("the second drop-off", [&] { return history(stringer_).size() == 7; }, [&] { act(stringer_, confirmed); });
  exchange(stringer_, lakeside_);
  exchange(second_head_, lakeside_);
}

StoryEnd Story::play() {
  harbour_opens();
  first_drop_off();
  two_more_at_harbour();
  two_answers();
  // Made while she is there: on a bag tag it goes further than any network.
  zarinas_card_ = text_at(ask(desk_, {"card", "make", "Ветрова"}), "text");
  strung_offline();
  lakeside_opens();
  same_as_last_time();
  withdrawn_and_lost();
  third_event();
  StoryEnd end;
  for (const json::value& job : history(second_head_)) {
    end.tensions.push_back(quantity_at(job, "mains_tension") + " / " + quantity_at(job, "crosses_tension"));
    end.stages.push_back(text_at(job, "stage"));
  }
  end.open_questions = ask(second_head_, {"questions"}, {}, {0, 3}).as_array().size();
  end.read_back = read_back_;
  // Ends with another code than 0 if chains, rows or entries are not as they should be.
  end.at_the_ridge = at_the_ridge_;
  for (const Tablet* tablet : {&head_, &desk_, &stringer_, &second_head_, &ridge_}) static_cast<void>(ask(*tablet, {"verify"}));
  end.killed = killed_;
  if (lakeside_.runs()) lakeside_.stop();
  if (harbour_.runs()) harbour_.stop();
  options_.tell("The history goes on with her: seven rackets, every one as it was agreed.");
  return end;
}

}  // namespace weavelog::testing
