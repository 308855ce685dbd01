#include "core/desk/read_back.h"

#include <algorithm>

#include "core/base/digest.h"

namespace weavelog {
namespace {

struct Group {
  const ReadBackLine* first = nullptr;
  std::vector<std::string> labels;
  std::int64_t count = 0;
};

/// In order of first mention.
std::vector<Group> grouped(const std::vector<ReadBackLine>& lines) {
  std::vector<Group> groups;
  for (const ReadBackLine& line : lines) {
    auto at = std::find_if(groups.begin(), groups.end(), [&](const Group& group) {
      return group.first->agreed == line.agreed && group.first->last_time == line.last_time &&
             group.first->cautions == line.cautions && group.first->settled == line.settled;
    });
    if (at == groups.end()) at = groups.insert(groups.end(), Group{&line, {}, 0});
    ++at->count;
    if (!line.racket_label.empty()) at->labels.push_back(line.racket_label);
  }
  return groups;
}

/// An enumeration, not a sentence: marks parted by commas read the same in the four languages.
std::string enumerated(const std::vector<std::string>& labels) {
  std::string out;
  for (const std::string& label : labels) out += (out.empty() ? "" : ", ") + label;
  return out;
}

std::string yes_if(bool condition) {
  return condition ? "yes" : "no";
}

class Speaker {
 public:
  explicit Speaker(const Language& language) : language_(language) {}

  void line(std::string_view key, const PhraseArgs& args = {}) {
    add(desk_words().say(language_, key, args));
  }
  void add(const std::string& text) {
    if (!text_.empty()) text_ += '\n';
    text_ += text;
  }

  void strings(std::string_view key, const std::string& string, const std::optional<Quantity>& gauge,
               Supply supply, StringOwner owner, const std::optional<Quantity>& tension,
               const std::optional<Quantity>& prestretch) {
    line(key, {{"named", yes_if(!string.empty())},
               {"string", string},
               {"gauged", yes_if(gauge.has_value())},
               {"gauge", gauge.value_or(Quantity{})},
               {"supply", std::string(name_of_choice(supply))},
               {"owner", std::string(name_of_choice(owner))},
               {"tensioned", yes_if(tension.has_value())},
               {"tension", tension.value_or(Quantity{})},
               {"stretched", yes_if(prestretch && prestretch->amount.mantissa != 0)},
               {"prestretch", prestretch.value_or(Quantity{})}});
  }

  void stencil(std::string_view key, const std::string& mark, const std::string& ink) {
    if (!mark.empty()) line(key, {{"mark", mark}, {"inked", yes_if(!ink.empty())}, {"ink", ink}});
  }

  void agreed(const Agreed& wish) {
    strings("read_back.mains", wish.mains_string, wish.mains_gauge, wish.mains_supply, wish.mains_owner,
            wish.mains_tension, wish.mains_prestretch);
    strings("read_back.crosses", wish.crosses_string, wish.crosses_gauge, wish.crosses_supply,
            wish.crosses_owner, wish.crosses_tension, wish.crosses_prestretch);
    if (wish.pieces) line("read_back.pieces", {{"pieces", *wish.pieces}});
    if (wish.knots) line("read_back.knots", {{"knots", *wish.knots}});
    if (wish.knot_pretension && wish.knot_pretension->amount.mantissa != 0)
      line("read_back.knot_pretension", {{"value", *wish.knot_pretension}});
    stencil("read_back.racket_stencil", wish.racket_stencil, wish.racket_ink);
    stencil("read_back.string_stencil", wish.string_stencil, wish.string_ink);
    if (!wish.dampener.empty()) line("read_back.dampener", {{"text", wish.dampener}});
    if (!wish.overgrip.empty()) line("read_back.overgrip", {{"text", wish.overgrip}});
    if (!wish.note.empty()) line("read_back.note", {{"text", wish.note}});
  }

  void settled(const SettledField& field) {
    std::vector<std::string> answers;
    for (const Value& answer : field.answers) answers.push_back(value_words(language_, field.name, answer));
    line("read_back.settled", {{"field", field_words(language_, field.name)},
                               {"answers", enumerated(answers)},
                               {"value", value_words(language_, field.name, field.value)}});
  }

  void caution(Caution caution) {
    line("read_back.caution", {{"text", caution_for_player(language_, caution)}});
  }

  [[nodiscard]] std::string text() && { return std::move(text_); }

 private:
  const Language& language_;
  std::string text_;
};

}  // namespace

std::string read_back(const ReadBackRequest& request) {
  Speaker speaker(request.language);
  for (const Group& group : grouped(request.lines)) {
    speaker.line("read_back.rackets", {{"labelled", yes_if(!group.labels.empty())},
                                       {"count", group.count},
                                       {"labels", enumerated(group.labels)}});
    speaker.agreed(group.first->agreed);
    if (const auto& before = group.first->last_time) {
      const auto changes = compare(*before, group.first->agreed);
      if (changes.empty()) speaker.line("read_back.same");
      for (const std::string& line : change_lines(request.language, changes)) speaker.add(line);
    }
    for (const SettledField& field : group.first->settled) speaker.settled(field);
    for (const Caution caution : group.first->cautions)
      if (caution != Caution::arm_pain) speaker.caution(caution);
  }
  // Nobody should think of a time that was never said.
  if (request.ready_by)
    speaker.line("read_back.ready_by",
                 {{"rush", std::string(name_of_choice(request.rush))}, {"when", *request.ready_by}});
  else
    speaker.line("read_back.no_time", {{"rush", std::string(name_of_choice(request.rush))}});
  if (std::any_of(request.lines.begin(), request.lines.end(), [](const ReadBackLine& line) {
        return std::find(line.cautions.begin(), line.cautions.end(), Caution::arm_pain) !=
               line.cautions.end();
      }))
    speaker.caution(Caution::arm_pain);
  speaker.line("read_back.confirm");
  return std::move(speaker).text();
}

std::vector<std::string> change_lines(const Language& language, const std::vector<Change>& changes) {
  std::vector<std::string> lines;
  for (const Change& change : changes)
    lines.push_back(desk_words().say(language, "read_back.change",
                                     {{"field", field_words(language, change.name)},
                                      {"before", value_words(language, change.name, change.before)},
                                      {"after", value_words(language, change.name, change.after)}}));
  return lines;
}

void confirm(DropOff& drop_off, const Confirmation& confirmation) {
  const Digest digest = digest_of(as_bytes(confirmation.text));
  drop_off.confirmed_text = confirmation.text;
  drop_off.confirmed_digest.assign(digest.begin(), digest.end());
  drop_off.confirmed_language = confirmation.language.tag();
  drop_off.confirmed_at = confirmation.at;
  drop_off.confirmed_device.assign(confirmation.device.bytes.begin(), confirmation.device.bytes.end());
}

bool is_confirmed(const DropOff& drop_off) {
  if (drop_off.confirmed_text.empty()) return false;
  const Digest digest = digest_of(as_bytes(drop_off.confirmed_text));
  return std::equal(digest.begin(), digest.end(), drop_off.confirmed_digest.begin(),
                    drop_off.confirmed_digest.end());
}

}  // namespace weavelog
