#include "app-qml/view/bundle_model.h"

#include <QFile>
#include <QSignalSpy>
#include <fstream>

#include "app-qml/view/intake_model.h"
#include "sync/carry/bundle_chunk.h"
#include "sync/carry/carried_file.h"
#include "tests/app/device_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

namespace fs = std::filesystem;

QUrl url(const fs::path& path) { return QUrl::fromLocalFile(QString::fromStdString(path.string())); }
std::vector<fs::path> filesIn(const fs::path& folder) {
  std::vector<fs::path> out;
  for (const auto& one : fs::directory_iterator(folder)) out.push_back(one.path());
  return out;
}

struct CarryRoom : AppRoom {
  BookId event, wendel, okafor;
  fs::path stick;

  explicit CarryRoom(const std::string& name = "Ilse's tablet") : stick(folder / "stick") {
    stop();
    settings->setDeviceName(QString::fromStdString(name));
    fs::create_directory(stick);
    start();
    clock.set(WallClock::system().now());
  }
  void fill() {
    event = addEvent("Harbour Open", "2031-05-26");
    wendel = addPlayer(named("Wendelmoor", "Ilse"));
    okafor = addPlayer(named("Okafor"));
    REQUIRE(waitUntil([&] { return device->eventName() == "Harbour Open"; }));
  }
  void setConsent(const BookId& book, ConsentChoice choice) {
    Draft draft(book, kPlayerBook, kActEdit);
    draft.put(ledger().entities(book, kPerson).front(), tag_of<Person>(&Person::consent), to_value(choice));
    append(draft);
    QCoreApplication::processEvents();
  }
};

void sealWith(BundleModel& model, const QString& words) {
  model.setReceiver({});
  model.setWords(words);
  model.setWordsAgain(words);
}
bool measured(BundleModel& model) {
  return waitUntil([&] { return !model.sizing() && !model.size().isEmpty(); });
}
bool arrives(BundleModel& model) {
  return waitUntil([&] { return model.state() == BundleModel::Arrived || model.state() == BundleModel::Waiting; }) &&
         model.state() == BundleModel::Arrived;
}
QVariant told(PlayerChoice& choice, int row, const char* role) { return choice.data(choice.index(row), choice.roleNames().key(role)); }

constexpr const char* ferry = "ferry window ladder salt";

}  // namespace

TEST_CASE("players are handed to a colleague: who may not go is said with the reason, and the colleague's receipt comes back") {
  CarryRoom room;
  room.fill();
  BundleModel model(*room.device);
  model.begin(BundleModel::Players);
  CHECK_FALSE(model.ready());
  room.setConsent(room.okafor, ConsentChoice::withdrawn);
  auto& choice = *model.choice();
  REQUIRE(waitUntil([&] { return choice.rowCount() == 2; }));
  choice.setTyped("oka");
  REQUIRE(choice.rowCount() == 1);
  CHECK_FALSE(told(choice, 0, "allowed").toBool());
  CHECK(told(choice, 0, "why") == "withdrew the consent");
  choice.choose(told(choice, 0, "book").toString(), true);
  CHECK(choice.chosen() == 0);
  choice.setTyped("");
  choice.choose(QString::fromStdString(room.wendel.hex()), true);
  CHECK(choice.chosen() == 1);
  CHECK(told(choice, 0, "name") == "Wendelmoor Ilse");
  REQUIRE(measured(model));
  CHECK(model.players() == 1);
  CHECK(model.size() == "1 kB");
  sealWith(model, "1234567");
  CHECK(model.strength() == 0);
  CHECK_FALSE(model.ready());
  sealWith(model, ferry);
  CHECK(model.strength() >= 2);
  CHECK_FALSE(model.strengthWords().isEmpty());
  model.setWordsAgain("ferry window ladder sand");
  CHECK_FALSE(model.ready());
  model.setWordsAgain(ferry);
  model.setNote("for Lakeside");
  REQUIRE(model.ready());
  model.write(url(room.stick));
  REQUIRE(arrives(model));
  CHECK(model.trouble().isEmpty());
  const fs::path file = model.file().toStdString();
  CHECK(fs::exists(file));
  CHECK(file.extension() == ".weavelog");

  CarryRoom colleague("Bo's tablet");
  IntakeModel intake(*colleague.device);
  intake.open(url(file));
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Locked; }));
  intake.unlock("something else");
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Locked && intake.wrongWords(); }));
  intake.unlock(ferry);
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Seen; }));
  CHECK(intake.maker() == "Ilse's tablet");
  CHECK(intake.standing() == "not known here");
  CHECK(intake.note() == "for Lakeside");
  CHECK(intake.newNames() == QStringList{"Wendelmoor Ilse"});
  CHECK_FALSE(intake.mustTrust());
  CHECK(colleague.ledger().books().empty());
  REQUIRE(intake.takeable());
  intake.take(false);
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Taken; }));
  CHECK(intake.complete());
  CHECK(intake.account().join(" ").contains("1 new entry"));
  CHECK(colleague.ledger().book(room.wendel));
  CHECK_FALSE(colleague.ledger().book(room.okafor));
  REQUIRE(intake.receiptFile() == QString::fromStdString(file.string() + ".receipt"));

  // Twice without harm.
  intake.open(url(file));
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Locked; }));
  intake.unlock(ferry);
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Seen; }));
  CHECK(intake.holds().join(" ").contains("here already"));
  intake.take(false);
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Taken; }));
  CHECK(intake.complete());

  CHECK(model.made().first().toMap().value("taken").toList().isEmpty());
  IntakeModel back(*room.device);
  QSignalSpy read(&back, &IntakeModel::receiptRead);
  back.open(url(file.string() + ".receipt"));
  REQUIRE(waitUntil([&] { return back.state() == IntakeModel::Told; }));
  CHECK(back.complete());
  CHECK(back.account().first().contains("Bo's tablet"));
  CHECK(read.count() == 1);
  // Where the bundle was not made it counts for nothing, and that is what is said: not that a file is missing.
  IntakeModel elsewhere(*colleague.device);
  Receipt stray;
  stray.bundle = make_bundle_id();
  stray.by = room.ledger().self();
  const Bytes sealed = must(seal_receipt(stray, room.ledger().key(), colleague.ledger().self().key));
  REQUIRE(write_carried_file(room.stick / "stray.receipt", false, [&](const ByteSink& sink) { return sink(sealed); }));
  elsewhere.open(url(room.stick / "stray.receipt"));
  REQUIRE(waitUntil([&] { return elsewhere.state() == IntakeModel::Failed; }));
  CHECK(elsewhere.trouble().value("title") == "This receipt does not count");
  CHECK(elsewhere.trouble().value("detail").toString().contains("does not remember"));
  model.readMade();
  REQUIRE(model.made().size() == 1);
  CHECK(model.made().first().toMap().value("taken").toList().first().toString().contains("Bo's tablet"));
  // On a device that did not make it the receipt says nothing.
  intake.open(url(file.string() + ".receipt"));
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Failed; }));
  CHECK_FALSE(intake.trouble().isEmpty());
}

TEST_CASE("an event is taken along with its players who agreed; the others are named") {
  CarryRoom room;
  room.fill();
  for (const BookId& book : {room.wendel, room.okafor}) {
    Draft draft(room.event, kEventBook, kActImportEntryList);
    EntryListItem item;
    item.family_name = "X";
    item.player = book;
    (void)put_new(draft, item, room.clock.now());
    room.append(draft);
  }
  room.setConsent(room.okafor, ConsentChoice::this_room);
  BundleModel model(*room.device);
  model.begin(BundleModel::Event);
  REQUIRE(measured(model));
  CHECK(model.events() == 1);
  CHECK(model.players() == 1);
  REQUIRE(model.leftOut().size() == 1);
  CHECK(model.leftOut().first().toMap().value("name") == "Okafor");
  CHECK(model.leftOut().first().toMap().value("why") == "agreed to one room only");
  model.makeUpWords();
  CHECK(model.words().count('-') == 4);
  CHECK(model.strength() == 3);
  CHECK(model.ready());
}

TEST_CASE("a stick that is gone leaves the bundle waiting, over a restart too, and it goes on when the stick is back") {
  CarryRoom room;
  room.fill();
  auto model = std::make_unique<BundleModel>(*room.device);
  model->begin(BundleModel::Backup);
  sealWith(*model, ferry);
  REQUIRE(measured(*model));
  fs::rename(room.stick, room.folder / "drawer");
  model->write(url(room.stick));
  REQUIRE(waitUntil([&] { return model->state() == BundleModel::Waiting; }));
  CHECK(model->trouble().value("title").toString() == "The folder or stick is not there");
  model.reset();
  room.stop();
  room.start();
  model = std::make_unique<BundleModel>(*room.device);
  REQUIRE(model->state() == BundleModel::Waiting);
  model->begin(BundleModel::Players);
  CHECK(model->state() == BundleModel::Waiting);
  model->goOn();
  REQUIRE(waitUntil([&] { return model->state() == BundleModel::Waiting && !model->trouble().isEmpty(); }));
  fs::rename(room.folder / "drawer", room.stick);
  model->goOn();
  REQUIRE(arrives(*model));
  CHECK(filesIn(room.stick).size() == 1);
  model->seen();
  CHECK(model->state() == BundleModel::Choosing);

  // Somewhere else, and given up.
  model->begin(BundleModel::Backup);
  sealWith(*model, ferry);
  REQUIRE(measured(*model));
  model->write(url(room.folder / "nowhere"));
  REQUIRE(waitUntil([&] { return model->state() == BundleModel::Waiting; }));
  model->goOnIn(url(room.stick));
  REQUIRE(arrives(*model));
  CHECK(filesIn(room.stick).size() == 2);
  model->begin(BundleModel::Backup);
  sealWith(*model, ferry);
  REQUIRE(measured(*model));
  model->write(url(room.folder / "nowhere"));
  REQUIRE(waitUntil([&] { return model->state() == BundleModel::Waiting; }));
  model->giveUp();
  CHECK(model->state() == BundleModel::Choosing);
  CHECK(model->made().size() == 2);
}

TEST_CASE("a backup comes back whole on a new tablet, is refused on a colleague's, and a newer one says to update") {
  CarryRoom room;
  room.fill();
  room.setConsent(room.okafor, ConsentChoice::withdrawn);
  ContentFiles& pictures = room.device->station().contents();
  (void)must(pictures.add(room.okafor, Bytes(70'000, 1)));
  const Digest gone = must(pictures.add(room.okafor, Bytes(70'000, 2)));
  std::ofstream(room.device->station().folder() / "photos" / room.okafor.hex() / to_hex(gone), std::ios::trunc) << "scratched";
  BundleModel model(*room.device);
  model.begin(BundleModel::Backup);
  CHECK(model.receiver().isEmpty());
  sealWith(model, ferry);
  REQUIRE(measured(model));
  CHECK(model.players() == 2);
  CHECK(model.leftOut().isEmpty());
  model.write(url(room.stick));
  REQUIRE(arrives(model));
  CHECK(model.pictures() == 2);
  CHECK(model.picturesGone() == 1);
  const fs::path file = model.file().toStdString();

  const auto unlocked = [&](IntakeModel& intake, const fs::path& which) {
    intake.open(url(which));
    REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Locked || intake.state() == IntakeModel::Failed; }));
    intake.unlock(ferry);
    REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Seen || intake.state() == IntakeModel::Failed; }));
  };
  CarryRoom fresh("New tablet");
  IntakeModel intake(*fresh.device);
  unlocked(intake, file);
  CHECK(intake.backup());
  REQUIRE(intake.takeable());
  intake.take(false);
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Taken; }));
  CHECK(intake.complete());
  CHECK(intake.account().filter("lost already").size() == 1);
  CHECK(fresh.device->station().contents().all().size() == 1);
  for (const BookInfo& book : room.ledger().books()) CHECK(fresh.ledger().book(book.id)->heads == book.heads);

  CarryRoom colleague("Bo's tablet");
  (void)colleague.addPlayer(named("Mine"));
  IntakeModel refused(*colleague.device);
  unlocked(refused, file);
  CHECK_FALSE(refused.takeable());
  CHECK_FALSE(refused.trouble().isEmpty());
  refused.take(true);
  CHECK(refused.state() == IntakeModel::Seen);

  Bytes bytes = must(read_small_file(file, 1 << 20));
  bytes[16] = bytes[17] = kBundleFormat + 1;
  const std::size_t length = 20 + (bytes[18] | static_cast<std::size_t>(bytes[19]) << 8);
  const Digest check = digest_of({as_bytes("weavelog bundle head 1"), ByteView(bytes).first(length)});
  std::copy_n(check.begin(), 8, bytes.begin() + static_cast<std::ptrdiff_t>(length));
  const fs::path newer = room.stick / "newer.weavelog";
  REQUIRE(write_carried_file(newer, false, [&](const ByteSink& sink) { return sink(bytes); }));
  IntakeModel old(*colleague.device);
  old.open(url(newer));
  REQUIRE(waitUntil([&] { return old.state() == IntakeModel::Failed; }));
  CHECK(old.trouble().value("title") == "It was made by a newer Weavelog");
  CHECK(old.trouble().value("text").toString().contains("Update"));
}

TEST_CASE("a bundle sealed for a device that knows nobody is taken in once the words were compared; a cut one goes on") {
  CarryRoom room, colleague("Bo's tablet");
  room.fill();
  BundleWish wish;
  wish.books = {room.wendel, room.okafor};
  wish.receiver = colleague.ledger().self().key;
  Bytes bytes;
  (void)must(make_bundle(room.ledger(), room.device->station().devices(), wish, sink_of(bytes)));
  const fs::path file = room.stick / "two.weavelog";
  const auto store = [&](ByteView part) {
    REQUIRE(write_carried_file(file, true, [&](const ByteSink& sink) { return sink(part); }));
  };
  store(ByteView(bytes).first(bytes.size() - 40));
  IntakeModel intake(*colleague.device);
  intake.open(url(file));
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Seen; }));
  CHECK(intake.mustTrust());
  CHECK(intake.keyWords().count('-') >= 2);
  intake.take(false);
  CHECK(intake.state() == IntakeModel::Seen);
  intake.take(true);
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Taken; }));
  CHECK_FALSE(intake.complete());
  CHECK_FALSE(intake.trouble().isEmpty());
  store(bytes);
  intake.goOn();
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Taken; }));
  CHECK(intake.complete());
  CHECK(colleague.ledger().books().size() == 2);

  // From now on the colleague is known here by name, and can be sealed for.
  CHECK(BundleModel(*colleague.device).receivers().size() == 2);
  intake.open(url(room.stick / "nothing.weavelog"));
  REQUIRE(waitUntil([&] { return intake.state() == IntakeModel::Failed; }));
  CHECK(intake.trouble().value("title") == "The folder or stick is not there");
}
