#include "tests/bench/workload/generate.h"

#include <algorithm>
#include <array>
#include <boost/json.hpp>
#include <fstream>
#include <map>
#include <random>
#include <set>
#include <stdexcept>
#include <unordered_map>

#include "tests/bench/workload/operations.h"

namespace weavelog::bench {
namespace {

constexpr std::int64_t kBegin = 1'780'000'000'000;
constexpr std::int64_t kMinute = 60'000;
constexpr std::int64_t kHour = 60 * kMinute;
constexpr std::int64_t kSpan = 14 * 24 * kHour;
constexpr std::array kStages = {"received", "queued",  "assigned", "mounted",
                                "mains",    "crosses", "checked",  "delivered"};

struct Shape {
  std::size_t players, jobs_each;
};

Shape shape_of(const std::string& size) {
  if (size == "T") return {40, 5};
  if (size == "S") return {200, 20};
  if (size == "M") return {1000, 50};
  if (size == "W4") return {10'000, 0};
  throw std::runtime_error("no such size: " + size);
}

/// Draws from the Mersenne twister without the standard distributions, whose results differ between
/// libraries.
class Draws {
 public:
  explicit Draws(std::uint32_t seed) : source_(seed) {}
  std::int64_t below(std::int64_t end) {
    return static_cast<std::int64_t>(source_() % static_cast<std::uint64_t>(end));
  }
  bool chance(int percent) { return below(100) < percent; }
  template <class List>
  const auto& one_of(const List& list) {
    return list[static_cast<std::size_t>(below(static_cast<std::int64_t>(list.size())))];
  }

 private:
  std::mt19937_64 source_;
};

std::string padded(std::int64_t value, std::size_t width) {
  std::string digits = std::to_string(value);
  return std::string(digits.size() < width ? width - digits.size() : 0, '0') + digits;
}
std::string text(const std::string& value) {
  return "s:" + value;
}
std::string number(std::int64_t value) {
  return "n:" + std::to_string(value);
}
std::string halves(std::int64_t twice) {
  return "n:" + std::to_string(twice / 2) + (twice % 2 != 0 ? ".5" : "");
}
std::string flag(bool value) {
  return value ? "b:1" : "b:0";
}

/// One line of an action, and what it does to the state.
struct Line {
  std::string record, key, value;  ///< an event has its key as "E\tstage" and all of its rest as the value
};
using Lines = std::vector<Line>;

/// The state by file order, which the digest is taken of.
class Reference {
 public:
  void apply(const Lines& lines) {
    for (const Line& line : lines) state_[line.record][line.key] = line.value;
  }
  [[nodiscard]] std::string digest(const std::set<std::string>& left_out = {}) const {
    StateDigest out;
    for (const auto& [record, fields] : state_)
      for (const auto& [key, value] : fields)
        if (!left_out.contains(record + "\t" + key)) out.field(record, key, value);
    return out.text();
  }

 private:
  std::unordered_map<std::string, std::map<std::string, std::string>> state_;
};

class Sink {
 public:
  Sink(const std::filesystem::path& file, const std::string& header, Reference& reference)
      : name_(file.string()), out_(file), reference_(reference) {
    out_ << "#ops1\t" << header << '\n';
  }
  void action(std::int64_t time, const std::string& device, const Lines& lines) {
    out_ << "A\t" << ++actions_ << '\t' << time << '\t' << device << '\t' << lines.size() << '\n';
    for (const Line& line : lines)
      out_ << (line.key.starts_with("E\t") ? "E\t" + line.record + line.key.substr(1)
                                           : "S\t" + line.record + "\t" + line.key)
           << '\t' << line.value << '\n';
    writes_ += lines.size();
    reference_.apply(lines);
  }
  boost::json::object close() {
    out_.close();
    if (!out_) throw std::runtime_error(name_ + ": cannot be written");
    return {{"actions", actions_}, {"writes", writes_}, {"bytes", std::filesystem::file_size(name_)}};
  }

 private:
  std::string name_;
  std::ofstream out_;
  Reference& reference_;
  std::size_t actions_ = 0, writes_ = 0;
};

/// What is agreed with a player, by field; a job begins with a copy of part of it.
using Wish = std::map<std::string, std::string>;

class Maker {
 public:
  explicit Maker(std::uint32_t seed) : draw_(seed) {}

  Draws& draw() { return draw_; }
  std::string device() { return "tab" + padded(1 + draw_.below(12), 2); }
  std::string staff() { return "staff" + padded(1 + draw_.below(40), 2); }

  std::string wish_value(const std::string& field) {
    if (field == "frame") return text(frame());
    if (field == "frameWeight") return number(285 + draw_.below(50));
    if (field == "balance") return number(305 + draw_.below(40));
    if (field == "grip") return text("L" + std::to_string(1 + draw_.below(5)));
    if (field == "pattern")
      return text(draw_.one_of(std::array{"16x18", "16x19", "16x20", "18x19", "18x20"}));
    if (field == "mainString" || field == "crossString") return text(string_name());
    if (field == "mainTension" || field == "crossTension") return halves(36 + draw_.below(25));
    if (field == "preStretch") return number(5 * draw_.below(3));
    if (field == "knots") return number(2 + 2 * draw_.below(2));
    if (field == "stencil") return flag(draw_.chance(60));
    if (field == "dampener") return flag(draw_.chance(50));
    return text(note());
  }
  static const std::vector<std::string>& wish_fields() {
    static const std::vector<std::string> fields = {
        "frame",       "frameWeight",  "balance",    "grip",  "pattern", "mainString", "crossString",
        "mainTension", "crossTension", "preStretch", "knots", "stencil", "dampener",   "note"};
    return fields;
  }

  Lines new_player(const std::string& record, Wish& wish, std::int64_t time) {
    Lines lines = {{record, "givenName", text(name())},
                   {record, "familyName", text(name())},
                   {record, "country", text(country())},
                   {record, "circuitId", text(padded(draw_.below(1'000'000), 6))},
                   {record, "hand", text(draw_.chance(88) ? "R" : "L")}};
    for (const std::string& field : wish_fields())
      lines.push_back({record, field, wish[field] = wish_value(field)});
    lines.push_back({record, "updatedAt", number(time)});
    return lines;
  }

  Lines edit(const std::string& record, Wish& wish, std::size_t fields, std::int64_t time) {
    std::set<std::string> chosen;
    while (chosen.size() < fields) chosen.insert(draw_.one_of(wish_fields()));
    Lines lines;
    for (const std::string& field : chosen) lines.push_back({record, field, wish[field] = wish_value(field)});
    lines.push_back({record, "updatedAt", number(time)});
    return lines;
  }

  Lines new_job(const std::string& record, const std::string& player, const Wish& wish, std::int64_t time) {
    Lines lines = {{record, "player", text(player)},
                   {record, "event", text("Event " + padded(1 + draw_.below(16), 2))},
                   {record, "day", number(1 + draw_.below(14))},
                   {record, "racketNo", number(1 + draw_.below(8))}};
    for (const char* field : {"frame", "pattern", "mainString", "crossString"})
      lines.push_back({record, field, wish.at(field)});
    for (const char* field : {"mainTension", "crossTension"})
      lines.push_back({record, field, nearby(wish.at(field))});
    for (const char* field : {"preStretch", "knots", "stencil"})
      lines.push_back({record, field, wish.at(field)});
    const Lines rest = {{record, "priority", number(draw_.below(3))},
                        {record, "dueAt", number(time + kHour * (2 + draw_.below(20)))},
                        {record, "createdAt", number(time)},
                        {record, "createdBy", text(staff())},
                        {record, "status", text("received")},
                        {record, "stringer", text("")},
                        {record, "machine", text("")},
                        {record, "price", number(20 + draw_.below(15))},
                        {record, "paid", flag(false)},
                        {record, "measured", number(0)},
                        {record, "note", text(note())},
                        {record, "updatedAt", number(time)}};
    lines.insert(lines.end(), rest.begin(), rest.end());
    lines.push_back(event(record, kStages[0], time, text("")));
    return lines;
  }

  /// A job moves to its stage number `stage`, from 1.
  Lines step(const std::string& record, std::size_t stage, std::int64_t time) {
    Lines lines = {{record, "status", text(kStages[stage])}, {record, "updatedAt", number(time)}};
    if (stage == 1) lines.push_back({record, "priority", number(draw_.below(3))});
    if (stage == 2) {
      lines.push_back({record, "stringer", text(staff())});
      lines.push_back({record, "machine", text("machine" + padded(1 + draw_.below(24), 2))});
    }
    if (stage == 6) lines.push_back({record, "measured", number(30 + draw_.below(20))});
    if (stage == 7) lines.push_back({record, "paid", flag(true)});
    lines.push_back(
        event(record, kStages[stage], time, stage == 6 ? number(30 + draw_.below(20)) : text("")));
    return lines;
  }

  /// A job is done once more; `word` names the event.
  Lines once_more(const std::string& record, const std::string& status, const std::string& word,
                  std::int64_t time) {
    return {{record, "status", text(status)},
            {record, "updatedAt", number(time)},
            {record, "measured", number(30 + draw_.below(20))},
            event(record, word, time, text(""))};
  }

 private:
  std::string frame() {
    return "Frame " + std::string(1, static_cast<char>('A' + draw_.below(6))) +
           std::to_string(90 + draw_.below(10));
  }
  std::string string_name() {
    return "String " + std::string(1, static_cast<char>('K' + draw_.below(6))) + "-" +
           std::to_string(110 + draw_.below(20));
  }
  std::string country() {
    const auto n = draw_.below(50);
    std::string out;
    for (const int step : {5, 9, 17}) out += static_cast<char>('A' + (n * step) % 26);
    return out;
  }
  std::string name() {
    static constexpr std::array kSyllables = {"bel", "dru", "fa", "gim", "hol", "ka", "lun", "mo",
                                              "nev", "osk", "pi", "ren", "sar", "tu", "vi",  "wen"};
    std::string out;
    for (auto n = 2 + draw_.below(2); n > 0; --n) out += draw_.one_of(kSyllables);
    out[0] = static_cast<char>(out[0] - 'a' + 'A');
    return out;
  }
  std::string note() {
    static constexpr std::array kWords = {"no",     "mark",   "on",     "the",   "crosses", "start",
                                          "at",     "head",   "tie",    "twice", "as",      "yesterday",
                                          "ask",    "before", "second", "match", "look",    "under",
                                          "bumper", "worn",   "grip",   "stays", "please",  "soft"};
    if (!draw_.chance(30)) return {};
    std::string out;
    for (auto n = 2 + draw_.below(9); n > 0; --n)
      out += (out.empty() ? "" : " ") + std::string(draw_.one_of(kWords));
    return out;
  }
  std::string nearby(const std::string& typed) {
    static constexpr std::array<std::int64_t, 7> kSteps = {-2, -1, 0, 0, 0, 1, 2};
    const std::int64_t twice = std::stoll(typed.substr(2)) * 2 + (typed.ends_with(".5") ? 1 : 0);
    return halves(twice + draw_.one_of(kSteps));
  }
  Line event(const std::string& job, const std::string& stage, std::int64_t time, const std::string& value) {
    return {job, "E\t" + stage, std::to_string(time) + "\t" + staff() + "\t" + value};
  }

  Draws draw_;
};

std::string player_name(std::size_t index) {
  return "p" + padded(static_cast<std::int64_t>(index) + 1, 5);
}
std::string job_name(std::size_t index) {
  return "j" + padded(static_cast<std::int64_t>(index) + 1, 6);
}

class Writer {
 public:
  Writer(std::filesystem::path folder, std::string size)
      : folder_(std::move(folder)),
        size_(std::move(size)),
        shape_(shape_of(size_)),
        make_(size_ == "W4" ? 4242 : 4200),
        wishes_(shape_.players) {}

  void write() {
    Sink all = sink("", "players=" + std::to_string(shape_.players));
    history(all);
    meta_["size"] = size_;
    meta_["players"] = shape_.players;
    meta_["jobs"] = shape_.players * shape_.jobs_each;
    for (auto& [key, value] : all.close()) meta_[key] = value;
    meta_["digest"] = state_.digest();
    if (size_ == "W4") {
      few_edits();
    } else {
      deltas();
    }
    std::ofstream out(folder_ / (size_ + ".meta.json"));
    out << boost::json::serialize(meta_) << '\n';
    if (!out) throw std::runtime_error((folder_ / (size_ + ".meta.json")).string() + ": cannot be written");
  }

 private:
  struct Planned {
    std::int64_t time;
    std::size_t player, job;
    int stage;  ///< -1: an edit of the wish before the job, 0: the job is taken in
    auto operator<=>(const Planned&) const = default;
  };

  Sink sink(const std::string& delta, const std::string& header) {
    return {folder_ / (size_ + (delta.empty() ? "" : ".delta" + delta) + ".ops"),
            "size=" + size_ + "\t" + header, state_};
  }

  void history(Sink& out) {
    for (std::size_t i = 0; i < shape_.players; ++i) {
      const std::int64_t time = kBegin + static_cast<std::int64_t>(i) * 1000;
      const std::string device = make_.device();
      out.action(time, device, make_.new_player(player_name(i), wishes_[i], time));
    }
    std::vector<Planned> plan;
    const std::int64_t opens = kBegin + static_cast<std::int64_t>(shape_.players) * 1000 + 1000;
    for (std::size_t i = 0; i < shape_.players; ++i)
      for (std::size_t k = 0; k < shape_.jobs_each; ++k) {
        std::int64_t time = opens + make_.draw().below(kSpan);
        const std::size_t job = i * shape_.jobs_each + k;
        if (make_.draw().chance(30)) plan.push_back({time - 1 - make_.draw().below(kMinute), i, job, -1});
        for (int stage = 0; stage < static_cast<int>(kStages.size()); ++stage) {
          if (stage > 0) time += kMinute + make_.draw().below(kHour);
          plan.push_back({time, i, job, stage});
        }
      }
    std::sort(plan.begin(), plan.end());
    for (const Planned& next : plan) {
      const std::string player = player_name(next.player), job = job_name(next.job), device = make_.device();
      Wish& wish = wishes_[next.player];
      Lines lines;
      if (next.stage < 0) {
        lines = make_.edit(player, wish, static_cast<std::size_t>(1 + make_.draw().below(4)), next.time);
      } else if (next.stage == 0) {
        if (make_.draw().chance(10)) lines = make_.edit(player, wish, 13, next.time);
        const Lines made = make_.new_job(job, player, wish, next.time);
        lines.insert(lines.end(), made.begin(), made.end());
      } else {
        lines = make_.step(job, static_cast<std::size_t>(next.stage), next.time);
      }
      out.action(next.time, device, lines);
    }
  }

  void few_edits() {
    Sink out = sink("A", "delta=A");
    for (const std::size_t i : {11U, 2400U, 5003U, 7410U, 9990U}) {
      const std::int64_t time = kBegin + 1'000'000'000 + static_cast<std::int64_t>(i);
      out.action(time, "tab01", make_.edit(player_name(i), wishes_[i], 3, time));
    }
    meta_["deltaA"] = out.close();
    meta_["digestAfterDelta"] = state_.digest();
  }

  /// A player of that side: the first ten are kept for what is contended.
  std::size_t player_of(char side) {
    const auto first = static_cast<std::int64_t>(std::min<std::size_t>(10, shape_.players - 4));
    const std::int64_t half = (static_cast<std::int64_t>(shape_.players) - first) / 2;
    return static_cast<std::size_t>(first + 2 * make_.draw().below(half) + (side == 'B' ? 1 : 0));
  }

  Lines uncontended(char side, int turn, std::size_t player, std::int64_t time, const std::string& status,
                    std::size_t& jobs_made) {
    const std::string record = player_name(player);
    if (turn == 0)
      return make_.edit(record, wishes_[player], static_cast<std::size_t>(1 + make_.draw().below(4)), time);
    if (turn == 1)
      return make_.new_job("n" + std::string(1, side) + padded(static_cast<std::int64_t>(++jobs_made), 5),
                           record, wishes_[player], time);
    const auto which =
        static_cast<std::size_t>(make_.draw().below(static_cast<std::int64_t>(shape_.jobs_each)));
    return make_.once_more(job_name(player * shape_.jobs_each + which), status,
                           status + std::to_string(++words_), time);
  }

  Lines contended(char side, std::size_t n, boost::json::array& conflicts) {
    const bool a = side == 'A';
    const auto number_of = static_cast<std::int64_t>(n);
    if (n < 5) {
      const std::string record = player_name(2 * n);
      if (a) conflicts.push_back({record, "mainTension", 40 + number_of, 50 + number_of});
      return {{record, "mainTension", number((a ? 40 : 50) + number_of)},
              a ? Line{record, "note", text("A was here " + std::to_string(n))}
                : Line{record, "grip", text("B" + std::to_string(n))}};
    }
    const std::string record = job_name(n);
    const auto says = [&](char who) { return std::string(1, who) + " says " + std::to_string(n); };
    if (a) conflicts.push_back({record, "note", says('A'), says('B')});
    return {{record, "note", text(says(side))},
            a ? Line{record, "price", number(100 + number_of)}
              : Line{record, "racketNo", number(90 + number_of)}};
  }

  void deltas() {
    const std::int64_t begin = kBegin + 2 * kSpan;
    boost::json::array conflicts;
    std::map<char, std::size_t> jobs_made;
    for (const char side : {'A', 'B'}) {
      Sink out = sink(std::string(1, side), std::string("delta=") + side);
      for (int n = 0; n < 100; ++n) {
        const std::int64_t time = begin + n * 5000 + (side == 'B' ? 1 : 0);
        out.action(time, side == 'A' ? "tab01" : "tab02",
                   n % 10 == 9
                       ? contended(side, static_cast<std::size_t>(n / 10), conflicts)
                       : uncontended(side, n % 10 / 3, player_of(side), time, "redo", jobs_made[side]));
      }
      meta_[std::string("delta") + side] = out.close();
    }
    std::set<std::string> left_out;
    for (const auto& one : conflicts)
      left_out.insert(std::string(one.as_array()[0].as_string()) + "\t" +
                      std::string(one.as_array()[1].as_string()));
    meta_["conflicts"] = conflicts;
    meta_["digestAfterDelta"] = state_.digest(left_out);
    for (const char side : {'A', 'B'}) {
      Sink out = sink(std::string("2") + side, std::string("delta2=") + side);
      for (int n = 0; n < 100; ++n) {
        const std::int64_t time = begin + kHour + n * 5000 + (side == 'B' ? 1 : 0);
        out.action(time, side == 'A' ? "tab01" : "tab02",
                   uncontended(side, n % 3, player_of(side), time, "again", jobs_made[side]));
      }
      meta_[std::string("delta2") + side] = out.close();
    }
    meta_["digestAfterDelta2"] = state_.digest(left_out);
  }

  std::filesystem::path folder_;
  std::string size_;
  Shape shape_;
  Maker make_;
  std::vector<Wish> wishes_;
  Reference state_;
  boost::json::object meta_;
  int words_ = 0;
};

}  // namespace

const std::vector<std::string>& workload_sizes() {
  static const std::vector<std::string> sizes = {"T", "S", "M", "W4"};
  return sizes;
}

void generate_workload(const std::filesystem::path& folder, const std::string& size) {
  Writer(folder, size).write();
}

}  // namespace weavelog::bench
