// What earlier versions wrote is read for ever (fixtures/frozen/README.md).

#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <set>
#include <sstream>

#include "core/desk/player_record.h"
#include "core/model/queries.h"
#include "core/store/backup.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct FrozenEntry {
  BookId book;
  BookKind kind{};
  AuthorId author;
  std::uint64_t seq = 0;
  Bytes body;
};

std::vector<FrozenEntry> frozen_entries(const std::string& version) {
  std::ifstream in(WEAVELOG_FIXTURES "/frozen/" + version + "/entries.txt");
  REQUIRE(in);
  std::vector<FrozenEntry> out;
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with('#')) continue;
    std::istringstream words(line);
    std::string book, author, body;
    int kind = 0;
    FrozenEntry& entry = out.emplace_back();
    words >> book >> kind >> author >> entry.seq >> body;
    entry.book = BookId::from_hex(book).value();
    entry.kind = static_cast<BookKind>(kind);
    entry.author = AuthorId::from_hex(author).value();
    entry.body.resize(body.size() / 2);
    REQUIRE(from_hex(body, entry.body));
  }
  return out;
}

/// The frozen database on a tablet of its own.
struct FrozenTablet {
  TemporaryFolder folder;
  std::unique_ptr<Tablet> tablet;
  explicit FrozenTablet(const std::string& version) {
    const auto restored = restore(WEAVELOG_FIXTURES "/frozen/" + version + "/ledger.db", folder / "ledger.db", false);
    if (!restored) FAIL(restored.error().message());
    tablet = std::make_unique<Tablet>("today", folder / "ledger.db");
  }
};

}  // namespace

TEST_CASE("frozen: every entry of every version is read and encoded to the same bytes") {
  const std::string version = GENERATE("0", "1", "2", "3", "4", "5");
  const auto entries = frozen_entries(version);
  CHECK(entries.size() >= 16);
  std::set<ActionKind> actions;
  std::set<std::size_t> values;
  for (const FrozenEntry& frozen : entries) {
    const auto entry = decode_entry(frozen.body, frozen.author);
    if (!entry) FAIL(entry.error().message());
    CHECK(entry->seq == frozen.seq);
    CHECK(encode_entry(*entry, frozen.author) == frozen.body);
    actions.insert(entry->action);
    for (const Write& write : entry->writes) values.insert(write.value.index());
  }
  CHECK(actions.contains(ActionKind{901}));
  CHECK(values.size() >= std::variant_size_v<Value> - 2);
}

/// Kinds of which the versions before 5 have none.
constexpr EntityKind kCameLater[] = {kCardTaken, kFrameFinding, kBenchRecord, kCheckResult, kReading, kPhoto, kStockItem, kStockMove, kCharge, kPayment,
                                     kDayClose, kMachine, kMachineCare, kShift, kListStep, kDraw, kDrawLine, kMatch, kHomeBench, kBenchWish, kPlanRules, kDayPlace,
                                     kQualityRules, kBookLink, kOtherName};
/// And fields of kinds that they knew.
constexpr FieldTag kFieldsCameLater[] = {tag_of<StageMark>(&StageMark::machine), tag_of<DropOff>(&DropOff::bags),
                                          tag_of<Setup>(&Agreed::knot_pretension), tag_of<Job>(&Agreed::knot_pretension),
                                          tag_of<Job>(&Job::time_agreed_by), tag_of<EventInfo>(&EventInfo::keep_days)};
/// Version 5 has a value in every field that there was then. Those that came since stand here until the next version is frozen.
const std::set<FieldTag> kSinceNewest{};

TEST_CASE("frozen: the database of every version opens, verifies, and shows everything") {
  const std::string version = GENERATE("0", "1", "2", "3", "4", "5");
  FrozenTablet frozen(version);
  Ledger& ledger = *frozen.tablet->ledger;
  const VerifyReport report = ledger.verify();
  for (const std::string& fault : report.faults) UNSCOPED_INFO(fault);
  CHECK(report.faults.empty());
  CHECK(report.stubs == 1);
  CHECK(report.entries == frozen_entries(version).size());
  REQUIRE(ledger.books(kPlayerBook).size() == 1);
  const BookId player = ledger.books(kPlayerBook)[0].id;
  CHECK(find_players(ledger, "žofie fam", 5).size() == 1);
  CHECK(find_players(ledger, "zofie", 5).size() == 1);
  CHECK(history_of(ledger, player, 5).size() == 1);
  CHECK(all_events(ledger).size() == 1);
  const auto questions = ledger.open_questions(player);
  REQUIRE(questions.size() == 1);
  CHECK(questions[0].cell.tag == tag_of<Setup>(&Setup::mains_tension));
  for (const FieldInfo& field : model_registry().fields()) {
    if (kSinceNewest.contains(field.tag)) continue;
    if (version != "5" && std::count(std::begin(kCameLater), std::end(kCameLater), field.entity) > 0) continue;
    if (version != "5" && std::count(std::begin(kFieldsCameLater), std::end(kFieldsCameLater), field.tag) > 0) continue;
    bool held = false;
    for (const BookInfo& book : ledger.books())
      for (const EntityState& state : ledger.entities(book.id, field.entity))
        held = held || state.find(field.tag) != nullptr;
    INFO(field.name);
    CHECK(held);
  }
  bool ahead = false;
  for (const KnownAuthor& author : ledger.authors())
    if (author.card.device == "Bench") ahead = author.wrong_clock;
  CHECK(ahead);
  REQUIRE(ledger.forgotten().size() == 1);
  CHECK(proves_itself(ledger.forgotten()[0].stub));
  CHECK_FALSE(ledger.book(ledger.forgotten()[0].stub.book));
  REQUIRE(ledger.rebuild());
  CHECK(ledger.verify().faults.empty());
  // It goes on as any other: numbers follow those given before, erased ones included.
  const std::int64_t before = ledger.position();
  Draft draft(player, kPlayerBook, ActionKind{1});
  draft.put(ledger.entities(player, kPerson).at(0), tag_of<Person>(&Person::family_name), std::string("Famulová"));
  const auto written = ledger.append(draft);
  REQUIRE(written);
  CHECK(written->position > before);
  REQUIRE(ledger.forget(player));
  CHECK(ledger.verify().faults.empty());
}

TEST_CASE("frozen: a backup can be made of what every version left, before any program of today opened it") {
  const std::string version = GENERATE("0", "1", "2", "3", "4", "5");
  TemporaryFolder folder;
  std::filesystem::copy_file(WEAVELOG_FIXTURES "/frozen/" + version + "/ledger.db", folder / "left.db");
  const DeviceKey key = DeviceKey::generate();
  const auto made = back_up(folder / "left.db", folder / "backup.db", &key);
  if (!made) FAIL(made.error().message());
  REQUIRE(back_up(folder / "backup.db", folder / "of that.db", &key));
  Tablet tablet("today", folder / "of that.db");
  CHECK(tablet.ledger->verify().faults.empty());
  CHECK(tablet.ledger->verify().entries == frozen_entries(version).size());
}

TEST_CASE("frozen: a backup of every version takes the place of a database of today, which forgets there what it had forgotten") {
  const std::string version = GENERATE("0", "1", "2", "3", "4", "5");
  const std::string left = WEAVELOG_FIXTURES "/frozen/" + version + "/ledger.db";
  TemporaryFolder folder;
  REQUIRE(restore(left, folder / "ledger.db", false));
  BookId player;
  {
    Tablet tablet("today", folder / "ledger.db");
    player = tablet.ledger->books(kPlayerBook).at(0).id;
    REQUIRE(tablet.ledger->forget(player));
  }
  const auto restored = restore(left, folder / "ledger.db", true);
  if (!restored) FAIL(restored.error().message());
  Tablet tablet("today", folder / "ledger.db");
  CHECK_FALSE(tablet.ledger->book(player));
  CHECK(tablet.ledger->is_forgotten(player));
  CHECK(find_players(*tablet.ledger, "zofie", 5).empty());
  CHECK(all_events(*tablet.ledger).size() == 1);
  CHECK(tablet.ledger->verify().faults.empty());
}

TEST_CASE("frozen: what a newer version added to it is handed on byte for byte") {
  const std::string version = GENERATE("0", "1", "2", "3", "4", "5");
  FrozenTablet frozen(version);
  Tablet other("other");
  std::size_t handed_on = 0;
  for (const BookInfo& book : frozen.tablet->ledger->books()) {
    const Batch batch = frozen.tablet->ledger->missing(book.id, {}, 1 << 30);
    const auto report = must(other.ledger->ingest(batch, 1));
    CHECK(report.quarantined == 0);
    handed_on += report.applied;
    for (const BatchEntry& held : batch.entries) {
      const auto entries = frozen_entries(version);
      CHECK(std::any_of(entries.begin(), entries.end(), [&](const FrozenEntry& entry) {
        return entry.book == batch.books[held.book].id && entry.author == batch.authors[held.author].id() &&
               entry.seq == held.seq && entry.body == held.body;
      }));
    }
    CHECK(other.ledger->book(book.id)->heads == book.heads);
  }
  CHECK(handed_on == frozen_entries(version).size());
  CHECK(other.ledger->books().size() == frozen.tablet->ledger->books().size());
}
