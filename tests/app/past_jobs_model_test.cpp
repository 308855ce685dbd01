#include "app-qml/view/past_jobs_model.h"

#include <QFile>
#include <QSignalSpy>

#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct PastRoom : RoomOfJobs {
  PastJobsModel model{device->work()};

  void choose(const QByteArray& text, const char* name = "old.csv") {
    QFile file(QString::fromStdString((folder / name).string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
    file.close();
    model.choose(QUrl::fromLocalFile(file.fileName()));
    settle();
  }
  void settle() {
    REQUIRE(waitUntil([&] { return !model.busy(); }));
  }
  [[nodiscard]] QVariantMap column(int index) const { return model.columns().at(index).toMap(); }
};

constexpr const char* kTable =
    "Nachname;Vorname;Land;Datum;Turnier;Saite;Spannung (kg);Farbe\n"
    "Wendelmoor;Ilse;NED;26.05.2030;Harbour Open;Tarnbrook Silk / Velmora Round;25/24;rot\n"
    "Wendelmoor;Ilse;NED;27.05.2030;Harbour Open;Tarnbrook Silk;25,5;blau\n"
    "Okonjo;Ada;NGR;27.05.2030;;Velmora Round;stramm;\n"
    "Okonjo;Ada;NGR;28.05.2030;;Velmora Round;23;\n";

}  // namespace

TEST_CASE("a table is shown column by column with its first values, and what would become of it is told before anything is stored") {
  PastRoom room;
  room.choose(kTable);
  CHECK(room.model.file() == "old.csv");
  CHECK(room.model.trouble() == PastJobsModel::None);
  REQUIRE(room.model.columns().size() == 8);
  CHECK(room.column(0)["header"] == "Nachname");
  CHECK(room.column(0)["ours"] == "family_name");
  CHECK(room.column(0)["first"] == QString::fromUtf8("Wendelmoor · Okonjo"));
  CHECK(room.column(6)["ours"] == "tension");
  CHECK(room.column(6)["unit"] == "kg");
  CHECK(room.column(7)["ours"] == "");
  CHECK(room.model.meanings().first().toMap()["text"] == "Not used");
  CHECK(room.model.meanings().size() == static_cast<qsizetype>(past_job_columns().size()) + 1);
  CHECK(room.model.unitDoubt() == PastJobsModel::Clear);
  CHECK(room.model.dayDoubt() == PastJobsModel::Clear);
  CHECK(room.model.goodRows() == 3);
  REQUIRE(room.model.badRows() == 1);
  CHECK(room.model.faults()[0].toMap()["text"].toString() ==
        QString::fromUtf8("Line 4, Tension (mains / crosses): “stramm” is not a tension, such as 25, 25.5 kg or 55 lb."));
  CHECK(room.model.rows()[0].toMap()["name"] == "Wendelmoor Ilse");
  CHECK(room.model.rows()[0].toMap()["detail"] ==
        QString::fromUtf8("2030-05-26 · Harbour Open · Tarnbrook Silk / Velmora Round · 25\u00a0kg / 24\u00a0kg"));
  CHECK(room.model.newJobs() == 3);
  CHECK(room.model.heldJobs() == 0);
  CHECK(room.model.newPlayers() == 2);
  CHECK(room.model.knownPlayers() == 0);
  CHECK(room.model.ready());
  CHECK(count_players(room.ledger()) == 0);
}

TEST_CASE("an import comes in beside the screen, is told of, and is taken back as one") {
  PastRoom room;
  QByteArray table = "name,country,date,string,tension\n";
  for (int i = 0; i < 60; ++i) table += "Player" + QByteArray::number(i) + " Ada,NED,2030-05-26,Silk,25 kg\n";
  room.choose(table);
  QSignalSpy progressed(&room.model, &PastJobsModel::progressed);
  room.model.bringIn();
  CHECK(room.model.busy());
  CHECK_FALSE(room.model.ready());
  REQUIRE(waitUntil([&] { return room.model.result() != PastJobsModel::Nothing && !room.model.busy(); }));
  CHECK(room.model.result() == PastJobsModel::BroughtIn);
  CHECK(progressed.count() >= 4);  // 60 players, 20 at a time
  CHECK(count_players(room.ledger()) == 60);
  CHECK(room.model.newJobs() == 0);  // and looked at again: all of it is here
  CHECK(room.model.heldJobs() == 60);
  CHECK(room.model.knownPlayers() == 60);
  CHECK_FALSE(room.model.ready());
  REQUIRE(room.model.imports().size() == 1);
  CHECK(room.model.imports()[0].toMap()["name"] == "old.csv");
  CHECK(room.model.imports()[0].toMap()["players"] == 60);
  // Another one, and the first is taken back from under it, but for a player on whom work has gone on.
  room.clock.advance(1000);
  room.choose("name,country,date,string,tension\nKova Mira,POR,2030-05-26,Silk,25 kg\n", "second.csv");
  room.model.bringIn();
  REQUIRE(waitUntil([&] { return room.model.imports().size() == 2 && !room.model.busy(); }));
  const BookId seven = find_players(room.ledger(), "player7").at(0).book;
  const auto job = must(load_player(room.ledger(), seven)).jobs.at(0);
  Draft draft(seven, kPlayerBook, kActEdit);
  Job now = job.now;
  now.mains_tension = kg("26");
  put_changes(draft, job.seen, now);
  room.append(draft);
  room.model.takeBack(1);
  REQUIRE(waitUntil([&] { return !room.model.busy(); }));
  CHECK(room.model.result() == PastJobsModel::PartlyTakenBack);
  CHECK(room.model.told().contains("Ada"));
  CHECK(count_players(room.ledger()) == 2);
  REQUIRE(room.model.imports().size() == 1);
  CHECK(room.model.imports()[0].toMap()["name"] == "second.csv");
  room.model.takeBack(0);
  REQUIRE(waitUntil([&] { return !room.model.busy(); }));
  CHECK(room.model.result() == PastJobsModel::TakenBack);
  CHECK(find_players(room.ledger(), "kova").empty());
  CHECK(room.model.imports().isEmpty());
  room.model.takeBack(0);  // nothing left
  CHECK_FALSE(room.model.busy());
}

TEST_CASE("a person says what a column holds, and another that was taken for the same lets go of it") {
  PastRoom room;
  room.choose("who,x,y\n\"Wendelmoor, Ilse\",Silk,25 kg\n");
  CHECK(room.model.trouble() == PastJobsModel::NoNames);
  CHECK(room.model.columns().size() == 3);  // to be looked at all the same
  CHECK_FALSE(room.model.ready());
  room.model.setMeaning(0, "name");
  room.settle();
  CHECK(room.model.trouble() == PastJobsModel::NoStrings);
  room.model.setMeaning(1, "tension");
  room.settle();
  CHECK(room.model.badRows() == 1);
  room.model.setMeaning(2, "tension");
  room.settle();
  CHECK(room.column(1)["ours"] == "");
  CHECK(room.model.goodRows() == 1);
  room.model.setMeaning(1, "string");
  room.settle();
  CHECK(room.model.rows()[0].toMap()["detail"] == QString::fromUtf8("Silk · 25\u00a0kg"));
  CHECK(room.model.ready());
  room.model.setMeaning(9, "string");  // there is none
  CHECK_FALSE(room.model.busy());
}

TEST_CASE("what the figures do not tell is asked about before anything comes in") {
  PastRoom room;
  room.choose("name,date,tension\nIlse Wendelmoor,03/04/2030,24\nAda Okonjo,05/06/2030,52\n");
  CHECK(room.model.unitDoubt() == PastJobsModel::Open);
  CHECK(room.model.unit().isEmpty());
  CHECK(room.model.dayDoubt() == PastJobsModel::Open);
  CHECK_FALSE(room.model.ready());
  room.model.setUnit("lb");
  room.settle();
  CHECK(room.model.unitDoubt() == PastJobsModel::Said);
  CHECK(room.model.unit() == "lb");
  CHECK_FALSE(room.model.ready());
  room.model.setDayOrder(2);
  room.settle();
  CHECK(room.model.dayDoubt() == PastJobsModel::Said);
  CHECK(room.model.rows()[0].toMap()["detail"].toString().startsWith("2030-0"));
  CHECK(room.model.ready());
  // Found by the figures: shown, not asked.
  room.choose("name,date,tension\nIlse Wendelmoor,26/04/2030,24\nAda Okonjo,05/06/2030,25\n");
  CHECK(room.model.unitDoubt() == PastJobsModel::Found);
  CHECK(room.model.unit() == "kg");
  CHECK(room.model.dayDoubt() == PastJobsModel::Found);
  CHECK(room.model.dayOrder() == 1);
  CHECK(room.model.ready());
}

TEST_CASE("who is likely known is left out, taken as the same or as another, one by one") {
  PastRoom room;
  const BookId held = room.addPlayer(named("Wendelmoor", "Ilse"));
  const auto table = "name,tension,string\nIlse Wendelmoor,25 kg,Silk\nKova Mira,24 kg,Silk\n";
  room.choose(table);
  REQUIRE(room.model.likely().size() == 1);
  const auto asked = room.model.likely()[0].toMap();
  CHECK(asked["looksLike"] == "Wendelmoor Ilse");
  CHECK(asked["answer"] == PastJobsModel::LeaveOut);
  CHECK(room.model.newJobs() == 1);
  room.model.answer(asked["index"].toInt(), PastJobsModel::Another);
  CHECK(room.model.newPlayers() == 2);
  CHECK(room.model.newJobs() == 2);
  room.model.answer(asked["index"].toInt(), PastJobsModel::Same);
  CHECK(room.model.knownPlayers() == 1);
  room.model.bringIn();
  REQUIRE(waitUntil([&] { return room.model.result() == PastJobsModel::BroughtIn && !room.model.busy(); }));
  CHECK(must(load_player(room.ledger(), held)).jobs.size() == 1);
  CHECK(count_players(room.ledger()) == 2);
}

TEST_CASE("a file that can't be read says why, and other letters can be tried") {
  PastRoom room;
  room.model.choose(QUrl::fromLocalFile(QString::fromStdString((room.folder / "none.csv").string())));
  room.settle();
  CHECK(room.model.trouble() == PastJobsModel::NoFile);
  CHECK_FALSE(room.model.troubleText().isEmpty());
  room.choose("");
  CHECK(room.model.trouble() == PastJobsModel::NoTable);
  CHECK(room.model.troubleText() == "The file is empty. Choose one whose first line names the columns.");
  room.choose("name,tension\nIlse,25\nBo\nAda,tight\n");
  REQUIRE(room.model.faults().size() == 2);
  CHECK(room.model.faults()[0].toMap()["text"].toString().startsWith("Line 3, column 2: The row has 1 field(s), the first line 2."));
  CHECK(room.model.faults()[1].toMap()["line"] == 4);
  room.choose("name,date,tension\nIlse Wendelmoor,2099-05-26,25 kg\nAda Okonjo,2021-05-26,24 kg\n");
  REQUIRE(room.model.faults().size() == 1);
  CHECK(room.model.faults()[0].toMap()["text"].toString().endsWith(QString::fromUtf8(": “2099-05-26” is still to come, by this tablet’s clock.")));
  room.choose("name;Spannung;Saite\nM\xfcller;25 kg;Seide\n");
  CHECK(room.model.trouble() == PastJobsModel::NoTable);
  room.model.setEncoding(static_cast<int>(TextEncoding::windows_1252));
  room.settle();
  CHECK(room.model.trouble() == PastJobsModel::None);
  CHECK(room.model.rows()[0].toMap()["name"] == QString::fromUtf8("Müller"));
  room.model.leave();
  CHECK(room.model.file().isEmpty());
  CHECK(room.model.columns().isEmpty());
  CHECK(room.model.encoding() == 0);
  // Left while it is being read: nothing comes of it afterwards.
  room.model.choose(QUrl::fromLocalFile(QString::fromStdString((room.folder / "old.csv").string())));
  room.model.leave();
  room.settle();
  CHECK(room.model.columns().isEmpty());
}
