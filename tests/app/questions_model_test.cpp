#include "app-qml/view/questions_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "core/desk/bench.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A player whose mains tension is 24 kg for the bench tablet and 26 kg here.
struct TwoAnswers : RoomOfJobs {
  BookId player = addPlayer(named("Okafor", "Sade"));
  MadeJob made = receive(player, day_wish(), 7);
  Tablet other{"Bench tablet"}, third{"Third tablet"};

  TwoAnswers() {
    bringTo(other, *this, player);
    // Says 27 kg and is met when a test wants it.
    bringTo(third, *this, player);
    third.clock.set(clock.now() + kMinute);
    third.change<Job>(player, made.job, [](Job& job) { job.mains_tension = kg("27"); });
    other.change<Job>(player, made.job, [](Job& job) { job.mains_tension = kg("24"); });
    setHere(kg("26"));
  }
  void setHere(const Quantity& tension) {
    const auto state = *ledger().entity(player, made.job);
    auto job = from_state<Job>(state);
    job.mains_tension = tension;
    Draft draft(player, kPlayerBook, kActEdit);
    put_changes(draft, state, job);
    append(draft);
  }
  [[nodiscard]] Job job() const { return from_state<Job>(*ledger().entity(player, made.job)); }
};

QVariantMap answer(const QuestionsModel& model, int row, int at) {
  return role(model, row, "answers").toList().at(at).toMap();
}

}  // namespace

TEST_CASE("both answers stand side by side with who, where and when") {
  TwoAnswers room;
  QuestionsModel model(room.device->work());
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  CHECK(model.count() == 0);
  bringFrom(room.other, room, room.player);
  REQUIRE(waitUntil([&] { return model.count() == 1; }));
  CHECK(role(model, 0, "player") == "Okafor Sade");
  CHECK(role(model, 0, "field") == "Mains tension");
  REQUIRE(role(model, 0, "answers").toList().size() == 2);
  QStringList devices;
  for (int i = 0; i < 2; ++i) {
    devices.append(answer(model, 0, i).value("device").toString());
    CHECK(answer(model, 0, i).value("event") == "Harbour");
    CHECK_FALSE(answer(model, 0, i).value("at").toString().isEmpty());
  }
  devices.sort();
  CHECK(devices == QStringList{"Bench tablet", "Desk tablet"});
}

TEST_CASE("closing with an answer replaces both, and the question is gone on the other tablet too") {
  TwoAnswers room;
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  const int theirs = answer(model, 0, 0).value("device") == "Bench tablet" ? 0 : 1;
  CHECK(model.close(0, theirs, "", ""));
  CHECK(model.count() == 0);
  CHECK(room.job().mains_tension == kg("24"));
  bringTo(room.other, room, room.player);
  CHECK(room.other.ledger->open_questions(room.player).empty());
}

TEST_CASE("another answer can be given, and a slip of the unit is caught before it closes anything") {
  TwoAnswers room;
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  CHECK(role(model, 0, "units").toStringList() == QStringList{"kg"});
  CHECK_FALSE(model.wrongWith(0, "55", "kg").isEmpty());
  CHECK_FALSE(model.wrongWith(0, "soft", "kg").isEmpty());
  CHECK(model.wrongWith(0, "25,5", "kg").isEmpty());
  QSignalSpy failed(&room.device->work(), &Work::failed);
  CHECK_FALSE(model.closeOtherwise(0, "55", "kg"));
  CHECK(failed.count() == 1);
  CHECK(model.count() == 1);
  CHECK(model.closeOtherwise(0, "25,5", "kg"));
  CHECK(room.job().mains_tension == kg("25.5"));
  CHECK(model.count() == 0);
}

TEST_CASE("an answer that is not there closes nothing") {
  TwoAnswers room;
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  const auto before = room.ledger().position();
  CHECK_FALSE(model.close(0, 2, "", ""));
  CHECK_FALSE(model.close(0, -1, "", ""));
  CHECK_FALSE(model.close(1, 0, "", ""));
  CHECK_FALSE(model.closeOtherwise(-1, "24", "kg"));
  CHECK(room.ledger().position() == before);
}

TEST_CASE("a racket that two people took is a question of place, closed by where it is") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  room.stepApart(made, Stage::cut_out, Stage::on_machine);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  CHECK(role(model, 0, "kind").toInt() == QuestionsModel::Place);
  QStringList by;
  int machine = -1;
  for (int i = 0; i < 2; ++i) {
    by.append(answer(model, 0, i).value("by").toString());
    if (answer(model, 0, i).value("stage").toInt() == static_cast<int>(Stage::on_machine)) machine = i;
  }
  by.sort();
  CHECK(by == QStringList{"Bo", "Ines"});
  CHECK(model.close(0, machine, "lies on bench 2", "done"));
  CHECK(model.count() == 0);
  CHECK(room.stageOf(made) == Stage::on_machine);
}

TEST_CASE("a racket that two people put on the machine is a question of who has it, closed by the name") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  room.stepApart(made, Stage::on_machine, Stage::on_machine);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  CHECK(role(model, 0, "kind").toInt() == QuestionsModel::Holder);
  const int bo = answer(model, 0, 0).value("by").toString() == "Bo" ? 0 : 1;
  CHECK(model.close(0, bo, "asked both", "done"));
  CHECK(model.count() == 0);
  const auto after = must(load_player(room.ledger(), made.book));
  const auto now = after.stage_of(made.job);
  REQUIRE(now.newest.size() == 1);
  for (const auto& placed : marks_of(after, made.job))
    if (placed.id == now.newest.front()) CHECK(placed.mark.by == "Bo");
}

TEST_CASE("where linked books of one player differ it is asked among the questions, and the answer stands in both") {
  RoomOfJobs room;
  Person one = named("Wendelmoor", "Ilse"), other = named("Wendelmore", "Ilse");
  one.birth_year = 2002;
  other.birth_year = 2003;
  const BookId first = room.addPlayer(one), second = room.addPlayer(other);
  QuestionsModel model(room.device->work());
  CHECK(model.count() == 0);
  for (const Draft& draft : must(say_of_books(room.ledger(), first, second, LinkSaid::same_person, "Ines", room.clock.now()))) room.append(draft);
  REQUIRE(waitUntil([&] { return model.count() == 1; }));
  CHECK(role(model, 0, "kind").toInt() == QuestionsModel::Books);
  CHECK(role(model, 0, "player").toString().contains("Wendelmoor"));
  CHECK(role(model, 0, "entry").toInt() == QuestionsModel::Figure);
  const auto answers = role(model, 0, "answers").toList();
  REQUIRE(answers.size() == 2);
  CHECK(answers[0].toMap()["text"].toString() == "2003");  // said last
  CHECK_FALSE(model.close(0, 2, "", ""));
  CHECK_FALSE(model.wrongWith(0, "two thousand", "").isEmpty());

  SECTION("by one of the answers") {
    REQUIRE(model.close(0, 1, "", "2002"));
    CHECK(find_player(room.ledger(), second)->birth_year == 2002);
  }
  SECTION("by another one") {
    REQUIRE(model.closeOtherwise(0, "2001", ""));
    CHECK(find_player(room.ledger(), first)->birth_year == 2001);
    CHECK(find_player(room.ledger(), second)->birth_year == 2001);
  }
  CHECK(model.count() == 0);
}

TEST_CASE("a question closed at another tablet while it is answered here stays, says so, and takes no answer") {
  TwoAnswers room;
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  REQUIRE(model.count() == 1);
  CHECK(role(model, 0, "closed").toMap().isEmpty());
  SECTION("one that nobody answers here goes") {
    closeThere(room.other, room, room.player, Value{kg("24")});
    CHECK(waitUntil([&] { return model.rowCount() == 0; }));
  }
  SECTION("one that is answered here") {
    model.begin(0);
    closeThere(room.other, room, room.player, Value{kg("24")});
    REQUIRE(waitUntil([&] { return model.count() == 0; }));
    REQUIRE(model.rowCount() == 1);
    const auto closed = role(model, 0, "closed").toMap();
    CHECK(closed.value("text").toString() == QString::fromUtf8("24\u00a0kg"));
    CHECK(closed.value("device") == "Bench tablet");
    CHECK(role(model, 0, "answers").toList().size() == 2);
    const auto before = room.ledger().position();
    QSignalSpy failed(&room.device->work(), &Work::failed);
    CHECK_FALSE(model.close(0, 0, "", ""));
    CHECK_FALSE(model.closeOtherwise(0, "25", "kg"));
    CHECK(failed.count() == 2);
    CHECK(room.ledger().position() == before);
    model.leave(0);
    CHECK(model.rowCount() == 0);
  }
  CHECK(room.job().mains_tension == kg("24"));
  CHECK(room.ledger().open_questions(room.player).empty());
}

TEST_CASE("an answer is not written over one that came in the same moment") {
  TwoAnswers room;
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  closeThere(room.other, room, room.player, Value{kg("24")});
  // Nothing has told the screen yet.
  REQUIRE(model.count() == 1);
  const int own = answer(model, 0, 0).value("device") == "Desk tablet" ? 0 : 1;
  CHECK_FALSE(model.close(0, own, "", ""));
  CHECK(room.job().mains_tension == kg("24"));
  CHECK(room.ledger().open_questions(room.player).empty());
  REQUIRE(model.rowCount() == 1);
  CHECK(role(model, 0, "closed").toMap().value("device") == "Bench tablet");
}

TEST_CASE("another answer that comes in stands below the others, and closes nothing before it was seen") {
  TwoAnswers room;
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  const QString first = answer(model, 0, 0).value("dot").toString(), second = answer(model, 0, 1).value("dot").toString();
  model.begin(0);
  CHECK_FALSE(role(model, 0, "anotherCame").toBool());
  bringFrom(room.third, room, room.player);
  REQUIRE(waitUntil([&] { return role(model, 0, "answers").toList().size() == 3; }));
  CHECK(answer(model, 0, 0).value("dot").toString() == first);
  CHECK(answer(model, 0, 1).value("dot").toString() == second);
  CHECK(role(model, 0, "anotherCame").toBool());
  CHECK_FALSE(model.close(0, 0, "", ""));
  CHECK(model.count() == 1);
  model.begin(0);
  CHECK_FALSE(role(model, 0, "anotherCame").toBool());
  CHECK(model.close(0, 2, "", ""));
  CHECK(room.job().mains_tension == kg("27"));
  CHECK(model.rowCount() == 0);
}

TEST_CASE("a racket that was put right elsewhere while somebody says here where it is stays as it was put") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  room.stepApart(made, Stage::cut_out, Stage::on_machine);
  QuestionsModel model(room.device->work());
  REQUIRE(model.count() == 1);
  model.begin(0);
  Tablet other("Bench tablet");
  bringTo(other, room, made.book);
  const auto record = must(load_player(*other.ledger, made.book));
  other.append(must(step_at_bench(record, made.job, StageStep{Stage::cut_out, "Bo", "it lies here", room.clock.now()})));
  bringFrom(other, room, made.book);
  REQUIRE(waitUntil([&] { return model.count() == 0; }));
  REQUIRE(model.rowCount() == 1);
  CHECK(role(model, 0, "closed").toMap().value("stage").toInt() == static_cast<int>(Stage::cut_out));
  CHECK(role(model, 0, "closed").toMap().value("by") == "Bo");
  CHECK_FALSE(model.close(0, 0, "lies on bench 2", "done"));
  CHECK_FALSE(model.close(0, 1, "lies on bench 2", "done"));
  CHECK(room.stageOf(made) == Stage::cut_out);
}

TEST_CASE("one thing that stands in two players' books is two questions, and each answer goes into its own book") {
  TwoAnswers room;
  // As a card or a book of the same person brings it: the job's number is the same.
  const BookId second = room.addPlayer(named("Okafor", "Ada"));
  const auto say = [&](Tablet* tablet, const char* tension) {
    EntityState state;
    state.book = second;
    state.id = room.made.job;
    state.kind = kJob;
    Draft draft(second, kPlayerBook, kActEdit);
    draft.put(state, tag_of<Job>(&Job::mains_tension), Value{kg(tension)});
    if (tablet != nullptr) {
      tablet->append(draft);
    } else {
      room.append(draft);
    }
  };
  bringTo(room.other, room, second);
  say(&room.other, "21");
  say(nullptr, "22");
  bringFrom(room.other, room, second);
  bringFrom(room.other, room, room.player);
  QuestionsModel model(room.device->work());
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  REQUIRE(model.count() == 2);
  const int ada = role(model, 0, "player") == "Okafor Ada" ? 0 : 1;
  model.begin(ada);
  REQUIRE(model.closeOtherwise(ada, "23", "kg"));
  REQUIRE(model.count() == 1);
  CHECK(role(model, 0, "player") == "Okafor Sade");
  CHECK(role(model, 0, "closed").toMap().isEmpty());
  CHECK(room.ledger().open_questions(second).empty());
  CHECK(room.ledger().open_questions(room.player).size() == 1);
  CHECK(from_state<Job>(*room.ledger().entity(second, room.made.job)).mains_tension == kg("23"));
}
