#include <QFile>

#include "app-qml/view/app_models.h"
#include "app-qml/view/benches_model.h"
#include "app-qml/view/day_model.h"
#include "app-qml/view/draw_model.h"
#include "app-qml/view/forecast_model.h"
#include "app-qml/view/new_time_model.h"
#include "app-qml/view/promise_model.h"
#include "app-qml/view/team_model.h"
#include "tests/app/room_jobs.h"
#include "tests/app/rows.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct PlanRoom : RoomOfJobs {
  PlanRoom() {
    TeamModel team(device->work());
    for (const char* name : {"Merrin", "Odalys"}) REQUIRE(team.setMember(name, 3, "en", "", "Kept"));
  }
  MadeJob bring(const char* family, int tag, UnixMs ready_by, Rush rush = Rush::none) {
    const auto made = receive(addPlayer(named(family, "Ilse")), day_wish(), tag, ready_by, rush);
    device->work().refresh();
    return made;
  }
  [[nodiscard]] QString path() const { return QString::fromStdString((folder / "").string()); }
};

bool settle(DayModel& day) {
  return waitUntil([&] { return !day.busy() && day.ready(); });
}

QVariantMap jobOf(const DayModel& day, const QString& tag) {
  for (const auto& bench : day.benches())
    for (const auto& job : bench.toMap()["jobs"].toList())
      if (job.toMap()["tag"] == tag) return job.toMap();
  return {};
}

QVariantList lines(int count) {
  QVariantList out;
  for (int i = 1; i <= count; ++i) out.append(QVariantMap{{"player", QStringLiteral("Ilse Player%1").arg(i)}, {"seed", i == 1 ? 1 : 0}});
  return out;
}

}  // namespace

TEST_CASE("the day stands on benches, is told to the room, and a rush shows what gives way") {
  PlanRoom room;
  DayModel day(room.device->work(), room.path());
  CHECK_FALSE(day.ready());
  (void)room.bring("Quillon", 1, room.clock.now() + 3 * kHour);
  (void)room.bring("Vantreel", 2, room.clock.now() + 3 * kHour);
  day.setWatched(true);
  REQUIRE(settle(day));
  CHECK(day.fault().isEmpty());
  CHECK(day.rackets() == 2);
  CHECK(day.late() == 0);
  CHECK(day.benches().size() == 2);
  CHECK(day.minutes() % 60 == 0);
  CHECK_FALSE(day.told());
  CHECK(day.toTell() == 2);
  CHECK(day.doubts().join(' ').contains("8 to 20"));  // nobody wrote shifts
  const auto first = jobOf(day, "1");
  CHECK(first["until"].toInt() > first["from"].toInt());
  CHECK_FALSE(first["promised"].toString().isEmpty());
  CHECK(day.tell("told"));
  REQUIRE(settle(day));
  CHECK(day.told());
  CHECK(day.toTell() == 0);
  CHECK(day.changes().isEmpty());
  // Two rushes from the court: both benches' rackets give way.
  (void)room.bring("Osmer", 3, room.clock.now() + 40 * kMinute, Rush::on_court);
  (void)room.bring("Tarn", 4, room.clock.now() + 40 * kMinute, Rush::on_court);
  REQUIRE(settle(day));
  CHECK(jobOf(day, "3")["onCourt"].toBool());
  CHECK(jobOf(day, "3")["from"].toInt() <= day.now());
  CHECK(day.changes().size() == 2);
  CHECK(jobOf(day, "1")["changed"].toBool());
  CHECK(day.toTell() == 4);
  // A plan made anew stays as long as nobody has told it, whatever else happens in the room.
  day.planAnew();
  REQUIRE(settle(day));
  const int anew = day.toTell();
  CHECK(anew >= 4);
  room.device->work().refresh();
  REQUIRE(settle(day));
  CHECK(day.toTell() == anew);
  CHECK(day.tell("told"));
  REQUIRE(settle(day));
  CHECK(day.toTell() == 0);
}

TEST_CASE("what happened since somebody looked is told once, also after the app was closed") {
  PlanRoom room;
  (void)room.bring("Quillon", 1, room.clock.now() + 3 * kHour);
  {
    DayModel day(room.device->work(), room.path());
    day.setWatched(true);
    REQUIRE(settle(day));
    CHECK(day.news().isEmpty());  // nobody ever looked
    CHECK(day.lookedAt().isEmpty());
    day.setWatched(false);
  }
  (void)room.bring("Vantreel", 2, room.clock.now() + 3 * kHour);
  DayModel day(room.device->work(), room.path());
  day.setWatched(true);
  REQUIRE(settle(day));
  CHECK(day.news() == QStringList{"Came in: 2 Vantreel Ilse"});
  CHECK_FALSE(day.lookedAt().isEmpty());
  day.seen();
  CHECK(day.news().isEmpty());
  // A file that can't be read is as if nobody had looked.
  QFile file(room.path() + "/plan-seen-" + hex(room.event) + ".json");
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("{");
  file.close();
  DayModel again(room.device->work(), room.path());
  again.setWatched(true);
  REQUIRE(settle(again));
  CHECK(again.news().isEmpty());
}

TEST_CASE("without a team the day says what is missing, and it is not worked out while nobody looks") {
  RoomOfJobs room;
  DayModel day(room.device->work(), QString::fromStdString((room.folder / "").string()));
  room.device->work().refresh();
  CHECK_FALSE(day.busy());
  day.setWatched(true);
  REQUIRE(settle(day));
  CHECK(day.fault().contains("Team"));
  CHECK(day.benches().isEmpty());
  CHECK_FALSE(day.tell("told"));
}

TEST_CASE("the desk sees what can be promised, takes it by one tap, and is told when a wish can't be kept") {
  PlanRoom room;
  room.clock.set(room.clock.now() - room.clock.now() % kDay + 9 * kHour);  // in the shifts that count where none are said
  AppModels models(*room.device, *room.settings);
  auto& draft = *models.desk.draft();
  PromiseModel promise(room.device->work(), draft);
  promise.setWatched(true);
  models.desk.finder()->setTyped("Quillon");
  models.desk.addPlayer();
  REQUIRE(draft.pickedCount() == 1);
  REQUIRE(waitUntil([&] { return !promise.earliest().isEmpty(); }));
  CHECK(promise.confidence() == "95 %");
  CHECK_FALSE(promise.answered());
  promise.takeEarliest();
  CHECK(draft.readyBy() == promise.earliest());
  REQUIRE(waitUntil([&] { return promise.answered(); }));
  CHECK(promise.canBeKept());
  draft.readyAt(room.clock.now() + 12 * kMinute);
  REQUIRE(waitUntil([&] { return promise.answered() && !promise.canBeKept(); }));
  CHECK(promise.impossible());
  CHECK_FALSE(promise.earliest().isEmpty());
  promise.setWatched(false);
}

TEST_CASE("a racket of the room is promised for another time, with what can be kept beside it") {
  PlanRoom room;
  room.clock.set(room.clock.now() - room.clock.now() % kDay + 9 * kHour);
  const auto early = room.bring("Quillon", 1, room.clock.now() + 10 * kMinute), other = room.bring("Vantreel", 2, room.clock.now() + 2 * kHour);
  NewTimeModel time(room.device->work());
  time.setWatched(true);
  CHECK_FALSE(time.show(hex(early.book), hex(other.job)));
  REQUIRE(time.show(hex(early.book), hex(early.job)));
  CHECK(time.player() == "Ilse Quillon");
  CHECK(time.together() == 1);
  CHECK_FALSE(time.differs());
  CHECK_FALSE(time.inWork());
  // The old promise is looked at first.
  REQUIRE(waitUntil([&] { return time.answered(); }));
  CHECK_FALSE(time.canBeKept());
  REQUIRE_FALSE(time.earliest().isEmpty());
  time.takeEarliest();
  CHECK(time.differs());
  CHECK(time.time() == time.earliest());
  REQUIRE(waitUntil([&] { return time.answered() && time.canBeKept(); }));
  QStringList failed;
  QObject::connect(&room.device->work(), &Work::failed, [&](const QString& what) { failed.append(what); });
  CHECK_FALSE(time.agree("  ", "agreed"));
  CHECK(failed.size() == 1);
  time.move(15);
  REQUIRE(time.agree("coach", "agreed"));
  const auto record = must(load_player(room.ledger(), early.book));
  CHECK(record.jobs[0].now.time_agreed_by == "coach");
  CHECK(*record.jobs[0].now.ready_by > room.clock.now() + 30 * kMinute);
  // On the machine nothing is reckoned; a time can be agreed all the same.
  room.step(early, Stage::on_machine, "Merrin", "no inspection today");
  REQUIRE(time.show(hex(early.book), hex(early.job)));
  CHECK(time.inWork());
  time.setWatched(false);
}

TEST_CASE("a draw is typed in line by line, and what can't be is said") {
  PlanRoom room;
  DrawModel draws(room.device->work());
  draws.setWatched(true);
  QStringList told;
  QObject::connect(&room.device->work(), &Work::failed, [&](const QString& what) { told.append(what); });
  CHECK(draws.make("Singles", lines(8), 0, false, "made"));
  REQUIRE(draws.draws().size() == 1);
  CHECK(draws.rounds().size() == 3);
  CHECK_FALSE(draws.make("Doubles", lines(6), 0, false, "made"));  // no power of two
  auto twice = lines(4);
  twice[2] = twice[1];
  CHECK_FALSE(draws.make("Doubles", twice, 0, false, "made"));
  CHECK(told.size() == 2);
  auto open = lines(4);
  open[1] = QVariantMap{{"bye", true}};
  open[3] = QVariantMap{{"player", ""}};
  CHECK(draws.make("Doubles", open, 0, false, "made"));
  CHECK(draws.draws().size() == 2);
  CHECK_FALSE(draws.make("Group", lines(9), 0, true, "made"));
  CHECK(draws.make("Group", lines(5), 0, true, "made"));
  CHECK(draws.standing().size() == 5);
  CHECK(draws.rounds().size() == 5);  // with five, one rests each round
}

TEST_CASE("wishes and rules are set on the screen and hold for the next plan; meetings on one bench are lines") {
  PlanRoom room;
  DrawModel draws(room.device->work());
  draws.setWatched(true);
  REQUIRE(draws.make("Singles", lines(8), 0, false, "made"));
  BenchesModel benches(room.device->work());
  benches.setWatched(true);
  benches.plan("planned");
  REQUIRE(waitUntil([&] { return !benches.busy() && benches.planned(); }));
  int meetings = 0;
  for (const auto& bench : benches.benches())
    for (const auto& meeting : bench.toMap()["meetings"].toList()) {
      ++meetings;
      const auto count = bench.toMap()["people"].toList().size();
      CHECK(meeting.toMap()["one"].toInt() < count);
      CHECK(meeting.toMap()["other"].toInt() < count);
      CHECK(meeting.toMap()["odds"].toDouble() > 0);
    }
  CHECK(meetings > 0);  // eight players on two benches
  CHECK(benches.addWish(0, false, 1, "noted"));
  REQUIRE(benches.wishesOf(0).size() == 1);
  CHECK(at(benches.wishesOf(0), 0)["text"] == "only with Odalys");
  benches.plan("planned");
  REQUIRE(waitUntil([&] { return !benches.busy(); }));
  bool there = false;
  for (const auto& person : at(benches.benches(), 1)["people"].toList()) there = there || person.toMap()["person"] == 0;
  CHECK(there);
  CHECK_FALSE(at(benches.waysOf(0), 0)["allowed"].toBool());
  CHECK(benches.dropWish(at(benches.wishesOf(0), 0)["wish"].toInt(), "dropped"));
  CHECK(benches.wishesOf(0).isEmpty());
  CHECK(benches.setRules("even", "8 4 1", "kept"));
  CHECK(benches.chances() == "even");
  CHECK(benches.weights() == "8 4 1");
  CHECK_FALSE(benches.setRules("even", "many", "kept"));
}

TEST_CASE("what is to come is forecast by day and hour, with bands") {
  PlanRoom room;
  ForecastModel forecast(room.device->work());
  forecast.setWatched(true);
  REQUIRE(waitUntil([&] { return !forecast.busy(); }));
  CHECK_FALSE(forecast.fault().isEmpty());
  EventInfo info;
  for (const auto& state : room.ledger().entities(room.event, kEvent)) {
    Draft draft(room.event, kEventBook, kActEdit);
    info = from_state<EventInfo>(state);
    info.last_day = "2031-05-29";
    put_changes(draft, state, info);
    room.append(draft);
  }
  DrawModel draws(room.device->work());
  draws.setWatched(true);
  REQUIRE(draws.make("Singles", lines(16), 0, false, "made"));
  REQUIRE(waitUntil([&] { return !forecast.busy() && forecast.fault().isEmpty() && !forecast.days().isEmpty(); }));
  CHECK(forecast.days().size() >= 3);
  const auto last = at(forecast.days(), static_cast<int>(forecast.days().size()) - 1);
  CHECK(last["mean"].toInt() < at(forecast.days(), 0)["mean"].toInt());
  CHECK(last["low"].toInt() <= last["mean"].toInt());
  CHECK(last["high"].toInt() >= last["mean"].toInt());
  CHECK_FALSE(forecast.hours().isEmpty());
  CHECK(forecast.sums()["mean"].toInt() > 10);
  forecast.setDay(1);
  CHECK(forecast.day() == 1);
  forecast.setDay(99);
  CHECK(forecast.day() == forecast.days().size() - 1);
}
