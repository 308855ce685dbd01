#include "app-qml/view/known_alike.h"

#include <algorithm>

#include "app-qml/view/match_words.h"
#include "app-qml/view/model_text.h"

namespace {

// Less than this tells nobody from anybody.
bool saysEnough(const weavelog::PersonFacts& facts) {
  return facts.family.size() + facts.given.size() >= 3 || !facts.native.empty();
}

bool same(const weavelog::PersonFacts& a, const weavelog::PersonFacts& b) {
  return a.family == b.family && a.given == b.given && a.native == b.native && a.country == b.country && a.birth_year == b.birth_year &&
         a.hand == b.hand && a.tour_number == b.tour_number && a.rackets == b.rackets && a.strings == b.strings;
}

}  // namespace

KnownAlike::KnownAlike(Work& work, QObject* parent) : QObject(parent), work_(work) {}

void KnownAlike::lookFor(const QString& which, const std::optional<weavelog::PersonFacts>& facts) {
  const bool another = which != which_;
  if (another) {
    which_ = which;
    others_.clear();
    show({}, false);
  }
  if (!facts || !saysEnough(*facts)) {
    facts_.reset();
    return show({}, false);
  }
  if (!another && facts_ && same(*facts_, *facts)) return;
  facts_ = facts;
  look();
}

void KnownAlike::look() {
  // The sight of all players is kept while nothing is written.
  beside_.work(
      [&ledger = work_.ledger(), now = work_.now(), event = work_.event(), facts = *facts_, here = here_, position = position_] {
        Found out;
        out.position = ledger.position();
        out.here = here && position == out.position ? here : std::make_shared<const weavelog::PeopleHere>(ledger, now, true);
        const auto found = out.here->like(facts, event);
        out.band = found.band;
        for (const auto& candidate : found.candidates) {
          QVariantMap shown = candidateShown(candidate);
          shown.insert(QStringLiteral("book"), idText(candidate.match.book));
          out.people.append(shown);
          out.books.push_back(candidate.match.book);
        }
        return std::pair(facts, out);
      },
      [this](const auto& seen) {
        here_ = seen.second.here;
        position_ = seen.second.position;
        if (facts_ && same(*facts_, seen.first)) take(seen.second);
      });
}

void KnownAlike::take(const Found& found) {
  books_ = found.books;
  const bool somebodyNew = std::any_of(books_.begin(), books_.end(), [this](const auto& book) { return !others_.contains(book); });
  show(somebodyNew ? found.people : QVariantList(), found.band == weavelog::MatchBand::known);
}

void KnownAlike::someoneElse() {
  others_.insert(books_.begin(), books_.end());
  show({}, false);
}

void KnownAlike::show(QVariantList people, bool known) {
  if (people == people_ && known == known_) return;
  people_ = std::move(people);
  known_ = known && !people_.isEmpty();
  emit changed();
}
