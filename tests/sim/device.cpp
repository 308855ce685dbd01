#include "tests/sim/device.h"

#include <map>
#include <stdexcept>

#include "core/model/tables.h"
#include "core/people/consent.h"
#include "core/store/database.h"

namespace weavelog::sim {
namespace {

constexpr std::size_t kBlankKey = 65'535;
constexpr const char* kFolder = "/device";

struct Fields {
  std::vector<KindInfo> kinds;
  std::vector<FieldInfo> fields;
};

Fields fields_of(Program program) {
  Fields out;
  const FieldRegistry& today = model_registry();
  for (std::uint16_t kind = 0; kind < 100; ++kind)
    if (const auto name = today.name_of(EntityKind{kind}); !name.empty())
      out.kinds.push_back({EntityKind{kind}, name});
  for (const FieldInfo& field : today.fields()) {
    // The older program knows neither stencils nor the team.
    if (program == Program::older &&
        (field.entity == kTeamMember || field.name.find("stencil") != std::string_view::npos))
      continue;
    out.fields.push_back(field);
  }
  if (program == Program::newer) {
    out.fields.push_back({kNewerNote, kPerson, "newer_note", false});
    out.fields.push_back({kNewerAgreed, kSetup, "newer_agreed", true});
  }
  return out;
}

/// The product's tables for screens. At the end of a run they are made anew on every device, to be compared; to drop and create them is
/// most of what that costs, and makes SQLite read its schema and prepare every statement again. Where they stand they are emptied.
class Tables final : public Projection {
 public:
  [[nodiscard]] std::string_view name() const override { return tables_.name(); }
  [[nodiscard]] int version() const override { return tables_.version(); }
  void create(Connection& db) override {
    std::vector<std::string> names;
    auto& query = db.statement("SELECT name FROM sqlite_master WHERE type='table' AND name LIKE 'model~_%' ESCAPE '~' "
                               "AND name NOT LIKE 'model~_name~_%' ESCAPE '~'");
    while (query.executeStep()) names.push_back(query.getColumn(0).getString());
    if (names.empty()) return tables_.create(db);
    for (const std::string& name : names) db.raw().exec("DELETE FROM " + name);
  }
  void apply(Connection& db, std::span<const EntityChange> changes) override { tables_.apply(db, changes); }
  void forget(Connection& db, const BookId& book) override { tables_.forget(db, book); }
  [[nodiscard]] Digest digest(Connection& db) const override { return tables_.digest(db); }

 private:
  ModelTables tables_;
};

StationOptions options_for(const std::string& name, const std::string& vfs, const DeviceKey& key,
                           Program program, bool one_connection, const WallClock& clock) {
  // As they are where there are two connections, one of which then hears that the other has changed the schema.
  static const auto usual = std::make_shared<ModelTables>();
  static const auto kept = std::make_shared<Tables>();
  StationOptions options;
  options.folder = kFolder;
  options.vfs = vfs;
  options.one_thread = one_connection;
  options.key = key;
  options.device_name = name;
  options.registry = &registry_of(program);
  if (one_connection) {
    options.projections.push_back(kept);
  } else {
    options.projections.push_back(usual);
  }
  options.clock = &clock;
  return options;
}

DiskImage make_blank_image(std::size_t page) {
  seed_libraries(1);
  Time time{1'900'000'000'000};
  const DeviceClock clock(time);
  Disk disk("blank", 1, 4096);
  SQLite::Database(std::string(kFolder) + "/ledger.db", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0, disk.vfs())
      .exec("PRAGMA page_size=" + std::to_string(page) + "; PRAGMA journal_mode=WAL");
  if (const auto made = Station::open(options_for("blank", disk.vfs(), key_of(kBlankKey), Program::today, true, clock)); !made)
    throw std::logic_error(made.error().message());
  return disk.image();
}

/// The files of a device that has never done anything.
const DiskImage& blank_image(std::size_t page) {
  static const std::map<std::size_t, DiskImage> images{{1024, make_blank_image(1024)}, {4096, make_blank_image(4096)}};
  return images.at(page);
}

}  // namespace

const FieldRegistry& registry_of(Program program) {
  static const auto make = [](Program wanted, std::uint32_t schema) {
    const Fields fields = fields_of(wanted);
    return FieldRegistry(schema, fields.kinds, fields.fields);
  };
  static const FieldRegistry older = make(Program::older, 0);
  static const FieldRegistry newer = make(Program::newer, 2);
  return program == Program::older ? older : program == Program::newer ? newer : model_registry();
}

void prepare_devices() {
  (void)blank_image(4096);
}

const DeviceKey& key_of(std::size_t number) {
  static std::map<std::size_t, DeviceKey> keys;
  const auto found = keys.find(number);
  if (found != keys.end()) return found->second;
  std::array<std::uint8_t, 32> seed{};
  seed[0] = static_cast<std::uint8_t>(number);
  seed[1] = static_cast<std::uint8_t>(number >> 8);
  return keys.emplace(number, DeviceKey::from_seed(seed)).first->second;
}

Device::Device(const Making& how, const Time& time)
    : making(how),
      key_number(how.key_number),
      name((how.duty == Duty::server    ? "server "
            : how.duty == Duty::hostile ? "hostile "
                                        : "tablet ") +
           std::to_string(how.number)),
      clock(time),
      disk(name, how.seed, how.sector) {
  disk.load(blank_image(how.page));
}

bool Device::start() {
  if (up()) return true;
  auto opened = Station::open(options_for(name, disk.vfs(), key_of(key_number), making.program, making.one_connection, clock));
  if (!opened) {
    fault = opened.error();
    return false;
  }
  fault.reset();
  news_ = true;
  station_ = std::move(*opened);
  station_->ledger().subscribe([this](std::int64_t) { grown_ = news_ = true; });
  work_ = std::make_unique<Workplace>(
      *station_, [this](const BookId& book, BookKind kind) { return may_leave(book, kind, {}); });
  return true;
}

void Device::end() {
  work_.reset();
  station_.reset();
  seen_questions.clear();
  seen_record.reset();
}

void Device::die(Stop how) {
  disk.stop(how);
  end();
}

bool Device::may_leave(const BookId& book, BookKind kind, const BookId& room) {
  return may_cross(ledger(), book, kind, room);
}

namespace {

std::int64_t taken_back(const Ledger& ledger, const AuthorId& author) {
  std::int64_t out = 0;
  ledger.read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT count(*) FROM entry WHERE source<>0 AND author=(SELECT n FROM author WHERE id=?)");
    bind_blob(query, 1, author.bytes);
    if (query.executeStep()) out = query.getColumn(0).getInt64();
  });
  return out;
}

}  // namespace

void Device::forget_knowing() {
  if (!up()) return;
  unaware = true;
  unaware_author_ = ledger().self().id();
  taken_back_ = taken_back(ledger(), unaware_author_);
}

void Device::ask_whether_it_knows() {
  if (std::exchange(news_, false) && taken_back(ledger(), unaware_author_) > taken_back_) unaware = false;
}

}  // namespace weavelog::sim
