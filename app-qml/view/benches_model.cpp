#include "app-qml/view/benches_model.h"

#include <QLocale>
#include <QQmlEngine>

#include <algorithm>
#include <map>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/text.h"
#include "core/plan/plan_words.h"

BenchesModel::BenchesModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &BenchesModel::refresh);
}

BenchesModel* BenchesModel::create(QQmlEngine* engine, QJSEngine*) {
  return new BenchesModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void BenchesModel::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  emit watchedChanged();
  refresh();
}

void BenchesModel::refresh() {
  if (!watched_) return;
  room_.reset();
  choice_.reset();
  fault_.clear();
  if (!work_.event()) {
    fault_ = tr("There is no event yet.");
  } else if (auto room = weavelog::RoomBenches::make(work_.ledger(), work_.event())) {
    room_ = std::move(*room);
    choice_ = room_->held();
    const auto& rules = room_->book().rules.now;
    apartFrom_ = static_cast<int>(rules.hard_places.value_or(weavelog::BenchWeights{}.hard_places));
    chances_ = qtext(rules.chances);
    weights_ = qtext(rules.round_weights);
  } else {
    fault_ = qtext(room.error().message());
  }
  show();
}

bool BenchesModel::knows(int person) const {
  return room_ && choice_ && person >= 0 && static_cast<std::size_t>(person) < choice_->size();
}

bool BenchesModel::pinned(std::size_t person) const {
  const auto* place = room_->book().of(room_->benches().people()[person].name);
  return place != nullptr && place->now.pinned.value_or(false);
}

void BenchesModel::show() {
  benches_.clear();
  without_.clear();
  if (!room_) {
    emit changed();
    return;
  }
  const auto& plan = room_->benches();
  const QLocale locale(QString::fromStdString(work_.language().tag()));
  if (!choice_)
    for (const auto& person : plan.people())
      if (room_->book().of(person.name) == nullptr) without_.append(qtext(person.name));
  std::vector<QVariantList> people(plan.benches().size()), meetings(plan.benches().size());
  std::vector<double> rackets(plan.benches().size());
  if (choice_) {
    std::vector<QStringList> meets(choice_->size());
    std::vector<int> place(choice_->size());
    std::vector<int> next(plan.benches().size());
    for (std::size_t person = 0; person < choice_->size(); ++person) place[person] = next[(*choice_)[person]]++;
    for (const auto& meeting : plan.meetings(*choice_)) {
      if (meeting.odds < 0.005) continue;
      meetings[(*choice_)[meeting.one]].append(
          QVariantMap{{"one", place[meeting.one]}, {"other", place[meeting.other]}, {"odds", meeting.odds}, {"late", meeting.hard}});
      const auto words = [&](std::size_t other) {
        return tr("%1: %2, %3 %")
            .arg(qtext(plan.people()[other].name), qtext(weavelog::round_words(work_.language(), plan, meeting)),
                 locale.toString(meeting.odds * 100, 'f', meeting.odds < 0.1 ? 1 : 0));
      };
      if (meets[meeting.one].size() < 2) meets[meeting.one].append(words(meeting.other));
      if (meets[meeting.other].size() < 2) meets[meeting.other].append(words(meeting.one));
    }
    for (std::size_t person = 0; person < choice_->size(); ++person)
      people[(*choice_)[person]].append(QVariantMap{{"person", static_cast<int>(person)},
                                                    {"name", qtext(plan.people()[person].name)},
                                                    {"pinned", pinned(person)},
                                                    {"meets", meets[person].join(QStringLiteral("\n"))}});
    for (std::size_t bench = 0; bench < plan.benches().size(); ++bench)
      for (std::size_t day = 0; day < plan.days(); ++day) rackets[bench] += plan.rackets(*choice_, bench, day);
  }
  const double most = std::max(1e-9, rackets.empty() ? 0 : *std::max_element(rackets.begin(), rackets.end()));
  for (std::size_t bench = 0; bench < plan.benches().size(); ++bench)
    benches_.append(QVariantMap{{"bench", static_cast<int>(bench)},
                                {"name", qtext(plan.benches()[bench].stringer)},
                                {"machine", qtext(plan.benches()[bench].machine)},
                                {"rackets", locale.toString(rackets[bench], 'f', 1)},
                                {"share", rackets[bench] / most},
                                {"people", people[bench]},
                                {"meetings", meetings[bench]}});
  emit changed();
}

bool BenchesModel::keepApartFrom(int places, const QString& say) {
  if (!room_) return false;
  auto rules = room_->book().rules.now;
  rules.hard_places = places;
  return work_.commit(weavelog::set_plan_rules(work_.event(), room_->book(), rules), say);
}

bool BenchesModel::setRules(const QString& chances, const QString& weights, const QString& say) {
  if (!room_) return false;
  auto rules = room_->book().rules.now;
  rules.chances = chances.toStdString();
  rules.round_weights = weights.simplified().toStdString();
  if (rules == room_->book().rules.now) return true;
  return work_.commit(weavelog::set_plan_rules(work_.event(), room_->book(), rules), say);
}

QVariantList BenchesModel::wishesOf(int person) const {
  QVariantList out;
  if (!room_ || person < 0 || static_cast<std::size_t>(person) >= room_->benches().people().size()) return out;
  const std::string name = weavelog::search_key(room_->benches().people()[static_cast<std::size_t>(person)].name);
  std::map<weavelog::EntityId, QString> names;
  for (std::size_t bench = 0; bench < room_->benches().benches().size(); ++bench) {
    names[room_->hands(bench).stringer] = qtext(room_->benches().benches()[bench].stringer);
    names[room_->hands(bench).machine] = qtext(room_->benches().benches()[bench].machine);
  }
  const auto& asks = room_->book().asks;
  for (std::size_t i = 0; i < asks.size(); ++i) {
    if (weavelog::search_key(asks[i].now.player) != name) continue;
    const QString with = names[asks[i].now.stringer ? asks[i].now.stringer : asks[i].now.machine];
    out.append(QVariantMap{{"wish", static_cast<int>(i)}, {"text", (asks[i].now.never.value_or(false) ? tr("never with %1") : tr("only with %1")).arg(with)}});
  }
  return out;
}

bool BenchesModel::addWish(int person, bool never, int bench, const QString& say) {
  if (!room_ || person < 0 || static_cast<std::size_t>(person) >= room_->benches().people().size() || bench < 0 ||
      static_cast<std::size_t>(bench) >= room_->benches().benches().size())
    return false;
  weavelog::BenchAsk wish;
  wish.player = room_->benches().people()[static_cast<std::size_t>(person)].name;
  if (never) wish.never = true;
  wish.stringer = room_->hands(static_cast<std::size_t>(bench)).stringer;
  return work_.commit(weavelog::add_wish(work_.event(), room_->book(), wish), say);
}

bool BenchesModel::dropWish(int wish, const QString& say) {
  if (!room_ || wish < 0 || static_cast<std::size_t>(wish) >= room_->book().asks.size()) return false;
  return work_.commit(weavelog::remove_wish(work_.event(), room_->book().asks[static_cast<std::size_t>(wish)]), say);
}

void BenchesModel::plan(const QString& say) {
  if (!room_ || busy()) return;
  beside_.work([room = room_] { return room->benches().plan(); }, [this, room = room_, say](const auto& plan) { take(room, plan, say); });
  emit busyChanged();
}

void BenchesModel::take(const std::shared_ptr<weavelog::RoomBenches>& room, const weavelog::Outcome<weavelog::BenchPlan>& plan, const QString& say) {
  emit busyChanged();
  if (!plan) return work_.tell(plan.error());
  // Written over what the book says now, not over what it said when the planning began.
  auto now = weavelog::RoomBenches::make(work_.ledger(), work_.event());
  if (!now) return work_.tell(now.error());
  if (!(*now)->same_room(*room))
    return work_.tell({weavelog::FaultCode::conflict, tr("The draw or the team changed meanwhile.").toStdString(), {}, tr("Plan again.").toStdString()});
  const QLocale locale(QString::fromStdString(work_.language().tag()));
  const auto& solution = plan->solution;
  const double gap = solution.gap() * 100;
  proof_ = gap < 0.05 ? tr("Proven: no plan is better.") : tr("No plan is better by more than %1 %.").arg(locale.toString(gap, 'f', 1));
  switch (solution.rule) {
    case weavelog::BenchSolution::Rule::kept: proof_ += tr(" Nobody shares a bench with somebody they can meet late in the draw."); break;
    case weavelog::BenchSolution::Rule::impossible:
    case weavelog::BenchSolution::Rule::not_found: proof_ += tr(" Some who can meet late in the draw share a bench: there are too few benches to hold all apart."); break;
    case weavelog::BenchSolution::Rule::none: break;
  }
  if (!plan->moved.empty()) proof_ += QStringLiteral(" ") + tr("%n player(s) moved.", nullptr, static_cast<int>(plan->moved.size()));
  const auto draft = (*now)->keep(plan->choice(), work_.who().toStdString(), work_.now());
  if (draft.empty()) {
    refresh();
    return;
  }
  work_.commit(draft, say);
}

QString BenchesModel::why(int person) const {
  if (!knows(person)) return {};
  const auto at = static_cast<std::size_t>(person);
  return qtext(weavelog::reason_words(work_.language(), room_->benches(), *choice_, at, room_->benches().why(*choice_, at)));
}

QVariantList BenchesModel::waysOf(int person) const {
  QVariantList out;
  if (!knows(person)) return out;
  const auto at = static_cast<std::size_t>(person);
  const auto& plan = room_->benches();
  const QLocale locale(QString::fromStdString(work_.language().tag()));
  const auto here = plan.with_move(*choice_, at, (*choice_)[at]);
  for (std::size_t bench = 0; bench < plan.benches().size(); ++bench) {
    const auto there = plan.with_move(*choice_, at, bench);
    const bool allowed = there.own < weavelog::kNever || pinned(at);
    const double more = there.own < weavelog::kNever && here.own < weavelog::kNever ? there.total() - here.total() : 0;
    out.append(QVariantMap{{"bench", static_cast<int>(bench)},
                           {"name", qtext(plan.benches()[bench].stringer)},
                           {"here", bench == (*choice_)[at]},
                           {"cost", (more > 0.05 ? QStringLiteral("+") : QString()) + locale.toString(std::abs(more) < 0.05 ? 0.0 : more, 'f', 1)},
                           {"worse", more > 0.05},
                           {"allowed", allowed}});
  }
  return out;
}

bool BenchesModel::move(int person, int bench, const QString& say) {
  if (!knows(person) || bench < 0) return false;
  return work_.commit(room_->move(static_cast<std::size_t>(person), static_cast<std::size_t>(bench), true, work_.who().toStdString(), work_.now()), say);
}

bool BenchesModel::unpin(int person, const QString& say) {
  if (!knows(person)) return false;
  const auto at = static_cast<std::size_t>(person);
  return work_.commit(room_->move(at, (*choice_)[at], false, work_.who().toStdString(), work_.now()), say);
}
