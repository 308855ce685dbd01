#include "tests/bench/workload/operations.h"

#include <boost/json.hpp>
#include <charconv>
#include <cstdio>
#include <iterator>
#include <stdexcept>

namespace weavelog::bench {
namespace {

template <class Number>
bool number(std::string_view text, Number& out) {
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), out);
  return error == std::errc{} && end == text.data() + text.size() && !text.empty();
}

/// The parts between tabs; fewer are returned than there are if there are more than N.
template <std::size_t N>
std::size_t split(std::string_view line, std::array<std::string_view, N>& parts) {
  std::size_t count = 0;
  for (;;) {
    const auto tab = line.find('\t');
    if (count == N) return N + 1;
    parts[count++] = line.substr(0, tab);
    if (tab == std::string_view::npos) return count;
    line.remove_prefix(tab + 1);
  }
}

std::uint32_t fnv1a(std::uint32_t basis, std::string_view bytes) {
  for (const char c : bytes) basis = (basis ^ static_cast<std::uint8_t>(c)) * 16777619U;
  return basis;
}

/// A value of the facts as the operation files have it.
std::string typed(const boost::json::value& value) {
  if (value.is_string()) return "s:" + std::string(value.as_string());
  char text[32];
  std::snprintf(text, sizeof text, "n:%.15g", value.to_number<double>());
  return text;
}

}  // namespace

OperationFile::OperationFile(const std::filesystem::path& file) : name_(file.string()), in_(file) {
  if (!in_) throw std::runtime_error(name_ + ": cannot be read");
}

void OperationFile::bad(const char* what) const {
  throw std::runtime_error(name_ + ", line " + std::to_string(line_) + ": " + what);
}

Operation OperationFile::operation(std::string_view line) const {
  std::array<std::string_view, 6> parts;
  const std::size_t count = split(line, parts);
  Operation out;
  if (parts[0] == "S" && count == 4) {
    out.record = parts[1];
    out.name = parts[2];
    out.value = parts[3];
  } else if (parts[0] == "E" && count == 6) {
    out.event = true;
    out.record = parts[1];
    out.name = parts[2];
    if (!number(parts[3], out.time)) bad("a time that is no number");
    out.staff = parts[4];
    out.value = parts[5];
  } else {
    bad("neither S with 3 parts nor E with 5");
  }
  if (out.value.size() < 2 || out.value[1] != ':') bad("a value without a type");
  return out;
}

std::span<const Action> OperationFile::next(std::size_t most) {
  actions_.clear();
  lines_.clear();
  // First the lines, then the views into them.
  std::vector<std::pair<std::size_t, std::size_t>> ranges;
  std::size_t taken = 0;
  const auto read = [&](std::string& into) {
    while (std::getline(in_, into)) {
      ++line_;
      if (!into.empty() && into.front() != '#') return true;
    }
    return false;
  };
  if (pending_.empty() && !read(pending_)) return {};
  while (!pending_.empty() && taken < most) {
    lines_.push_back(std::move(pending_));
    pending_.clear();
    ++taken;
    std::string line;
    while (read(line)) {
      if (line.front() == 'A') {
        pending_ = std::move(line);
        break;
      }
      lines_.push_back(std::move(line));
    }
  }
  for (const std::string& line : lines_) {
    if (line.front() != 'A') {
      if (actions_.empty()) bad("a write before the first action");
      actions_.back().writes.push_back(operation(line));
      continue;
    }
    std::array<std::string_view, 5> parts;
    Action& action = actions_.emplace_back();
    if (split(line, parts) != 5 || !number(parts[2], action.time)) bad("an action without its time");
    for (const char c : parts[3])
      if (c >= '0' && c <= '9') action.device = action.device * 10 + (c - '0');
  }
  return actions_;
}

void StateDigest::line(std::string_view bytes) {
  first_ += fnv1a(0x811c9dc5U, bytes);
  second_ += fnv1a(0x9747b28cU, bytes);
  ++count_;
}

void StateDigest::field(std::string_view record, std::string_view name, std::string_view typed) {
  std::string text;
  text.append(record).append("\t").append(name).append("\t").append(typed);
  line(text);
}

void StateDigest::event(std::string_view job, std::string_view stage, std::int64_t time,
                        std::string_view staff, std::string_view typed) {
  std::string text;
  text.append(job).append("\tE\t").append(stage).append("\t").append(std::to_string(time));
  text.append("\t").append(staff).append("\t").append(typed);
  line(text);
}

std::string StateDigest::text() const {
  char sums[17];
  std::snprintf(sums, sizeof sums, "%08x%08x", first_, second_);
  return std::to_string(count_) + ":" + sums;
}

std::set<std::string> WorkloadFacts::left_out() const {
  std::set<std::string> out;
  for (const Contended& one : contended) out.insert(one.record + "\t" + one.field);
  return out;
}

WorkloadFacts read_facts(const std::filesystem::path& folder, const std::string& size) {
  const auto file = folder / (size + ".meta.json");
  std::ifstream in(file);
  if (!in) throw std::runtime_error(file.string() + ": cannot be read");
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  const auto meta = boost::json::parse(text).as_object();
  WorkloadFacts facts;
  facts.size = size;
  facts.players = meta.at("players").to_number<std::size_t>();
  facts.jobs = meta.at("jobs").to_number<std::size_t>();
  facts.actions = meta.at("actions").to_number<std::size_t>();
  facts.writes = meta.at("writes").to_number<std::size_t>();
  const auto text_of = [&](const char* key) {
    const auto* held = meta.if_contains(key);
    return held != nullptr ? std::string(held->as_string()) : std::string();
  };
  facts.digest = text_of("digest");
  facts.after_delta = text_of("digestAfterDelta");
  facts.after_second = text_of("digestAfterDelta2");
  if (const auto* conflicts = meta.if_contains("conflicts"))
    for (const auto& one : conflicts->as_array()) {
      const auto& parts = one.as_array();
      facts.contended.push_back({std::string(parts.at(0).as_string()), std::string(parts.at(1).as_string()),
                                 typed(parts.at(2)), typed(parts.at(3))});
    }
  return facts;
}

}  // namespace weavelog::bench
