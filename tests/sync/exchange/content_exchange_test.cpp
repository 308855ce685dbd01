// Pictures between two devices: part by part beside the entries, gone on with after a cut, and nothing from or to whom it should not go.

#include "sync/exchange/content_exchange.h"

#include <random>
#include <set>

#include "tests/support/loopback.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

const EntityId kTwo = make_id<EntityId>(kNoon + 1);

Bytes picture(std::size_t size, unsigned seed = 1) {
  std::mt19937 random(seed);
  Bytes out(size);
  for (auto& byte : out) byte = static_cast<std::uint8_t>(random());
  return out;
}

/// A device with pictures; a box whose label is a hash names it.
struct Camera : SyncDevice {
  TemporaryFolder home;
  ContentFiles files;
  explicit Camera(const std::string& name, ContentBounds bounds = {}) : SyncDevice(name), files(home / "photos", bounds) {
    ledger->erase_with([this](Connection&, const BookId& book) { files.forget(book); });
  }
  SessionOptions options() {
    SessionOptions out;
    out.contents = {&files,
                    [this](const BookId& book, const Digest& hash) {
                      for (const EntityState& state : ledger->entities(book))
                        if (state.get(kLabel) && *state.get(kLabel) == Value(to_hex(hash))) return true;
                      return false;
                    },
                    {}};
    return out;
  }
  Digest take(const BookId& book, const Bytes& bytes, ContentOrigin origin = ContentOrigin::made) {
    const auto hash = files.add(book, bytes, origin);
    REQUIRE(hash);
    put(book, kOne, kLabel, to_hex(*hash));
    return *hash;
  }
};

struct Meeting : Loopback {
  Meeting(Camera& guest_device, Camera& host_device) : Loopback(guest_device, host_device, guest_device.options(), host_device.options()) {}
  Meeting(Camera& guest_device, Camera& host_device, SessionOptions guest_options, SessionOptions host_options)
      : Loopback(guest_device, host_device, std::move(guest_options), std::move(host_options)) {}
  void want(const BookId& book, const Digest& hash) { push(to_host, guest.fetch(book, hash)); }
  void ticks(int count = 1) {
    for (int i = 0; i < count; ++i) {
      push(to_host, guest.tick());
      push(to_guest, host.tick());
      deliver();
    }
  }
  [[nodiscard]] const ContentFetch& fetch() const {
    REQUIRE(guest.status().fetches.size() == 1);
    return guest.status().fetches[0];
  }
};

template <class M>
std::optional<M> next(const std::deque<Bytes>& queue) {
  if (queue.empty()) return std::nullopt;
  const auto message = decode_frame(queue.front());
  REQUIRE(message);
  const auto* held = std::get_if<M>(&*message);
  return held ? std::optional(*held) : std::nullopt;
}

/// A host with a picture of 200,000 bytes: four parts, and a guest that has the book.
struct Room {
  Camera host{"host"}, guest{"guest"};
  BookId book = make_id<BookId>(kNoon);
  Bytes bytes = picture(200'000);
  Digest hash;
  Room() {
    enrol(host, guest);
    hash = host.take(book, bytes);
    Meeting first(guest, host);
    first.deliver();
    REQUIRE(guest.ledger->book(book));
    REQUIRE_FALSE(guest.files.holds(book, hash));
  }
};

}  // namespace

TEST_CASE("a picture comes part by part when it is asked for, and an entry waits behind one part at most", "[photo]") {
  Room room;
  Meeting meeting(room.guest, room.host);
  meeting.deliver();
  meeting.want(room.book, room.hash);
  CHECK(next<ContentWish>(meeting.to_host)->offset == 0);
  meeting.deliver(2);  // the wish, the first part
  CHECK(meeting.fetch().state == FetchState::coming);
  CHECK(meeting.fetch().held == kContentPartBytes);
  CHECK(meeting.fetch().size == 200'000);
  CHECK(room.guest.files.part_held(room.book, room.hash) == kContentPartBytes);
  meeting.deliver(1);
  room.host.put(room.book, kTwo, kLabel, std::string("written meanwhile"));
  meeting.push(meeting.to_guest, meeting.host.changed());
  // One part lies before the entry; the next is only sent when that one has come.
  REQUIRE(meeting.to_guest.size() == 2);
  for (const Bytes& frame : meeting.to_guest) CHECK(frame.size() < kContentPartBytes + 200);
  meeting.deliver();
  CHECK(meeting.fetch().state == FetchState::here);
  CHECK(*room.guest.files.read(room.book, room.hash) == room.bytes);
  CHECK(meeting.guest.status().contents_received == 1);
  CHECK(meeting.host.status().contents_sent == 1);
  CHECK(room.guest.ledger->entity(room.book, kTwo));
  CHECK(meeting.guest.status().state != SessionState::closed);
  // Here already: nothing is sent for it.
  const std::size_t frames = meeting.frames;
  meeting.want(room.book, room.hash);
  CHECK(meeting.frames == frames);
  CHECK(meeting.fetch().state == FetchState::here);
}

TEST_CASE("a connection that is cut goes on from what has come", "[photo]") {
  Room room;
  {
    Meeting cut(room.guest, room.host);
    cut.deliver();
    cut.want(room.book, room.hash);
    cut.deliver(4);
  }
  CHECK(room.guest.files.part_held(room.book, room.hash) == 2 * kContentPartBytes);
  Meeting again(room.guest, room.host);
  again.want(room.book, room.hash);  // before it is open: it waits for that
  CHECK(again.fetch().state == FetchState::waiting);
  const std::size_t before = again.bytes;
  again.deliver();
  CHECK(again.fetch().state == FetchState::here);
  CHECK(again.bytes - before < 200'000 - 2 * kContentPartBytes + 4'000);
  CHECK(*room.guest.files.read(room.book, room.hash) == room.bytes);
}

TEST_CASE("nobody gets a picture of a book that may not go to them, or that no entry names", "[photo]") {
  Room room;
  const Bytes secret = picture(500, 9);
  const Digest unnamed = *room.host.files.add(room.book, secret);
  const BookId kept = make_id<BookId>(kNoon + 5);
  const Digest other = room.host.take(kept, secret);
  SessionOptions careful = room.host.options();
  bool agreed_to = true;
  careful.may_leave = [&](const BookId& book, BookKind) { return book != kept && agreed_to; };
  Meeting meeting(room.guest, room.host, room.guest.options(), careful);
  meeting.deliver();
  // The guest's own rule does not ask for what no entry names; a program without it hears no either.
  SessionOptions curious = room.guest.options();
  curious.contents.names = [](const BookId&, const Digest&) { return true; };
  Meeting asks(room.guest, room.host, curious, careful);
  asks.deliver();
  for (const auto& [book, hash] : {std::pair(room.book, unnamed), std::pair(kept, other), std::pair(make_id<BookId>(1), other)}) {
    asks.want(book, hash);
    asks.deliver();
    CHECK(asks.guest.status().fetches.back().state == FetchState::failed);
    CHECK(asks.guest.status().fetches.back().fault->code == FaultCode::refused);
    CHECK_FALSE(room.guest.files.holds(book, hash));
  }
  // Withdrawn in the middle: not one part more.
  asks.want(room.book, room.hash);
  asks.deliver(4);
  agreed_to = false;
  asks.deliver();
  CHECK(asks.guest.status().fetches.back().fault->code == FaultCode::refused);
  CHECK(asks.guest.status().state != SessionState::closed);
  CHECK_FALSE(room.guest.files.holds(room.book, room.hash));
  CHECK(asks.host.status().contents_sent == 0);
}

TEST_CASE("a peer that lies about a picture ends the exchange with one fault and leaves nothing half valid", "[photo]") {
  struct Lie {
    const char* name;
    std::function<void(ContentPart&)> tell;
    int at;  ///< the part with which it begins
  };
  const Lie lies[] = {
      {"wrong offset", [](ContentPart& part) { part.offset += 1; }, 0},
      {"an offset that goes round", [](ContentPart& part) { part.offset = ~std::uint64_t{0}; }, 0},
      {"no size", [](ContentPart& part) { part.size = 0; }, 0},
      {"larger than is allowed", [](ContentPart& part) { part.size = (8U << 20) + 1; }, 0},
      {"immeasurable", [](ContentPart& part) { part.size = ~std::uint64_t{0}; }, 0},
      {"another size than before", [](ContentPart& part) { part.size += 1; }, 1},
      {"fewer bytes", [](ContentPart& part) { part.bytes.pop_back(); }, 1},
      {"none", [](ContentPart& part) { part.bytes.clear(); }, 1},
      {"more bytes", [](ContentPart& part) { part.bytes.push_back(1); }, 2},
      {"other bytes", [](ContentPart& part) { part.bytes[5] ^= 1; }, 2},
      {"another picture", [](ContentPart& part) { part.hash[0] ^= 1; }, 1},
      {"another book", [](ContentPart& part) { part.book = make_id<BookId>(3); }, 1},
      {"an end before the end", [](ContentPart& part) { part.size = part.offset; part.bytes.clear(); }, 1},
  };
  for (const Lie& lie : lies) {
    INFO(lie.name);
    Room room;
    Meeting meeting(room.guest, room.host);
    meeting.deliver();
    meeting.want(room.book, room.hash);
    for (int part = 0; part < 4 && meeting.guest.status().state != SessionState::closed; ++part) {
      meeting.deliver(1);  // the wish
      auto answer = next<ContentPart>(meeting.to_guest);
      REQUIRE(answer);
      meeting.to_guest.pop_front();
      if (part == lie.at) lie.tell(*answer);
      meeting.push(meeting.to_host, meeting.guest.receive(encode_frame(*answer)));
    }
    CHECK(meeting.guest.status().state == SessionState::closed);
    REQUIRE(meeting.guest.status().fault);
    CHECK(meeting.guest.status().fault->code == FaultCode::malformed);
    CHECK_FALSE(room.guest.files.holds(room.book, room.hash));
    CHECK(meeting.to_host.size() == 1);  // the refusal
    meeting.deliver();
    CHECK(meeting.host.status().state == SessionState::closed);
    // An honest one helps afterwards, whatever is left.
    Meeting honest(room.guest, room.host);
    honest.want(room.book, room.hash);
    honest.deliver();
    CHECK(honest.fetch().state == FetchState::here);
    CHECK(*room.guest.files.read(room.book, room.hash) == room.bytes);
  }
}

TEST_CASE("what somebody else left half done and wrong is begun anew, and the honest peer is not blamed", "[photo]") {
  for (const std::size_t left_bytes : {std::size_t{70'000}, std::size_t{199'999}, std::size_t{200'000}, std::size_t{300'000}}) {
    INFO(left_bytes);
    Room room;
    REQUIRE(room.guest.files.add_part(room.book, room.hash, 400'000, 0, picture(left_bytes, 8)));
    Meeting meeting(room.guest, room.host);
    meeting.want(room.book, room.hash);
    meeting.deliver();
    CHECK(meeting.fetch().state == FetchState::here);
    CHECK(meeting.guest.status().state != SessionState::closed);
    CHECK(*room.guest.files.read(room.book, room.hash) == room.bytes);
  }
}

TEST_CASE("answers, offers and thanks that nobody asked for end the exchange", "[photo]") {
  Room room;
  const Message unasked[] = {ContentPart{room.book, room.hash, 3, 0, {1, 2, 3}}, ContentAbsent{room.book, room.hash, 0}, ContentOffer{}, ContentSettled{1}};
  for (const Message& message : unasked) {
    Meeting meeting(room.guest, room.host);
    meeting.deliver();
    meeting.push(meeting.to_host, meeting.guest.receive(encode_frame(message)));
    CHECK(meeting.guest.status().state == SessionState::closed);
    CHECK(meeting.guest.status().fault->code == FaultCode::malformed);
  }
  Meeting early(room.guest, room.host);
  (void)early.host.receive(encode_frame(ContentWish{room.book, room.hash, 0}));
  CHECK(early.host.status().state == SessionState::closed);
  CHECK_FALSE(room.guest.files.holds(room.book, room.hash));
}

TEST_CASE("a program of an earlier protocol is never sent any of it, and is told of as too old for pictures", "[photo]") {
  for (std::uint32_t protocol = kOldestProtocol; protocol < kProtocolWithContents; ++protocol)
    for (const bool old_host : {false, true}) {
      INFO("protocol " << protocol << (old_host ? ", host" : ", guest"));
      Room room;
      const BookId own = make_id<BookId>(kNoon + 7);
      const Digest made = room.guest.take(own, picture(900));
      room.guest.share(room.host, own);
      SessionOptions guest = room.guest.options(), host = room.host.options();
      (old_host ? host : guest).newest_protocol = protocol;
      Meeting meeting(room.guest, room.host, guest, host);
      meeting.want(room.book, room.hash);
      const auto watched = [&](std::deque<Bytes>& queue, Session& to, std::deque<Bytes>& back) {
        while (!queue.empty()) {
          const Bytes frame = queue.front();
          queue.pop_front();
          CHECK((frame[1] & 0x7f) < 23);  // ContentWish is the first
          meeting.push(back, to.receive(frame));
        }
      };
      for (int i = 0; i < 20; ++i) {
        watched(meeting.to_host, meeting.host, meeting.to_guest);
        watched(meeting.to_guest, meeting.guest, meeting.to_host);
        if (i % 5 == 4) {
          meeting.push(meeting.to_host, meeting.guest.tick());
          meeting.push(meeting.to_guest, meeting.host.tick());
          meeting.push(meeting.to_guest, meeting.host.fetch(own, made));
        }
      }
      CHECK(meeting.guest.status().state == SessionState::agreed);
      CHECK(meeting.host.status().state == SessionState::agreed);
      CHECK(meeting.fetch().state == FetchState::failed);
      CHECK(meeting.fetch().fault->code == FaultCode::newer);
      CHECK(meeting.guest.status().contents_unsettled == 0U);
    }
}

TEST_CASE("a player who is forgotten while the picture comes leaves no byte of it", "[photo]") {
  Room room;
  Meeting meeting(room.guest, room.host);
  meeting.deliver();
  meeting.want(room.book, room.hash);
  meeting.deliver(3);
  REQUIRE(room.guest.files.part_held(room.book, room.hash) > 0);
  REQUIRE(meeting.to_guest.size() == 1);  // a part is on its way
  REQUIRE(room.guest.ledger->forget(room.book));
  CHECK_FALSE(std::filesystem::exists(room.guest.home / "photos" / room.book.hex()));
  meeting.deliver();
  meeting.changed();
  CHECK(meeting.fetch().state == FetchState::failed);
  CHECK_FALSE(std::filesystem::exists(room.guest.home / "photos" / room.book.hex()));
  CHECK_FALSE(std::filesystem::exists(room.host.home / "photos" / room.book.hex()));
  CHECK(meeting.guest.status().state == SessionState::agreed);
  CHECK(room.host.files.total() == 0);
}

TEST_CASE("what was photographed on a tablet is at the server soon after its entry, and says so", "[photo]") {
  Camera host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon), kept = make_id<BookId>(kNoon + 1);
  const Bytes bytes = picture(150'000);
  const Digest hash = guest.take(book, bytes);
  const Digest private_one = guest.take(kept, picture(300, 4));
  (void)guest.files.add(book, picture(300, 5));  // no entry names it
  guest.share(host, book);
  Meeting meeting(guest, host);
  meeting.deliver();
  CHECK(*host.files.read(book, hash) == bytes);
  CHECK(meeting.guest.status().contents_unsettled == 0U);
  CHECK_FALSE(host.files.holds(kept, private_one));
  CHECK(host.files.total() == bytes.size());
  // One that is taken while they are connected; its entry comes first.
  const Digest live = *guest.files.add(book, picture(70'000, 6));
  meeting.ticks();
  CHECK_FALSE(host.files.holds(book, live));
  guest.put(book, kTwo, kLabel, to_hex(live));
  meeting.changed();
  CHECK(host.files.holds(book, live));
  // Named later for this host.
  guest.share(host, kept);
  meeting.changed();
  meeting.ticks(2);
  CHECK(host.files.holds(kept, private_one));
  CHECK(meeting.guest.status().contents_unsettled == 0U);
  CHECK(meeting.guest.status().contents_sent == 3);
  // At the next meeting everything is there.
  Meeting later(guest, host);
  later.deliver();
  later.ticks();
  CHECK(later.guest.status().contents_unsettled == 0U);
  CHECK(later.host.status().contents_received == 0);
}

TEST_CASE("a server without room leaves offered pictures where they are, and a reader offers none", "[photo]") {
  Camera host("host", {.one = 4000, .all = 5000}), guest("guest"), reader("reader");
  enrol(host, guest);
  enrol(host, reader, Role::reader);
  const BookId book = make_id<BookId>(kNoon), second = make_id<BookId>(kNoon + 1), large = make_id<BookId>(kNoon + 2);
  std::set<std::pair<BookId, Digest>> all{{book, guest.take(book, picture(3000, 1))}, {second, guest.take(second, picture(3000, 2))}};
  const Digest too_large = guest.take(large, picture(4001, 3));
  for (const BookId& one : {book, second, large}) guest.share(host, one);
  Meeting meeting(guest, host);
  meeting.deliver();
  meeting.ticks(3);
  CHECK(std::count_if(all.begin(), all.end(), [&](const auto& one) { return host.files.holds(one.first, one.second); }) == 1);
  CHECK_FALSE(host.files.holds(large, too_large));
  CHECK(meeting.guest.status().contents_unsettled == 0U);
  CHECK(meeting.guest.status().state == SessionState::agreed);

  Meeting reads(reader, host);
  reads.deliver();
  (void)reader.files.add(book, picture(100, 7));
  reads.ticks(2);
  CHECK(reads.guest.status().state == SessionState::agreed);
  reads.push(reads.to_guest, reads.host.receive(encode_frame(ContentOffer{{{book, digest_of(picture(100, 7)), 100}}})));
  CHECK(reads.host.status().state == SessionState::closed);
  CHECK(reads.host.status().fault->code == FaultCode::refused);
}

TEST_CASE("a damaged picture is not handed on, and the asker hears that nobody has it", "[photo]") {
  Room room;
  for (const auto& one : std::filesystem::recursive_directory_iterator(room.host.home / "photos"))
    if (one.is_regular_file()) std::filesystem::resize_file(one.path(), 150'000);
  Meeting meeting(room.guest, room.host);
  meeting.want(room.book, room.hash);
  meeting.deliver();
  CHECK(meeting.fetch().state == FetchState::failed);
  CHECK(meeting.fetch().fault->code == FaultCode::not_found);
  CHECK(room.guest.files.part_held(room.book, room.hash) == 0);
  CHECK(meeting.host.status().contents_sent == 0);
}

TEST_CASE("a host that asks others is asked again for a while, and not for ever", "[photo]") {
  Room room;
  const Bytes bytes = picture(2000, 3);
  const Digest elsewhere = digest_of(bytes);
  room.host.put(room.book, kTwo, kLabel, to_hex(elsewhere));
  SessionOptions host = room.host.options();
  int asked = 0;
  bool anybody = true;
  host.contents.seek = [&](const BookId&, const Digest&) {
    ++asked;
    return anybody;
  };
  Meeting meeting(room.guest, room.host, room.guest.options(), host);
  meeting.deliver();
  meeting.want(room.book, elsewhere);
  meeting.deliver();
  CHECK(meeting.fetch().state == FetchState::waiting);
  meeting.ticks(5);
  CHECK(asked > 1);
  REQUIRE(room.host.files.add(room.book, bytes, ContentOrigin::fetched));
  meeting.ticks(3);
  CHECK(meeting.fetch().state == FetchState::here);

  const Digest nowhere = digest_of(picture(2000, 4));
  room.host.put(room.book, kTwo, kLabel, to_hex(nowhere));
  meeting.changed();
  meeting.want(room.book, nowhere);
  meeting.deliver();
  CHECK(meeting.guest.status().fetches[1].state == FetchState::waiting);
  meeting.ticks(60);
  CHECK(meeting.guest.status().fetches[1].state == FetchState::failed);
  anybody = false;
  meeting.want(room.book, nowhere);
  meeting.deliver();
  CHECK(meeting.guest.status().fetches[1].fault->code == FaultCode::not_found);
}

TEST_CASE("two guests that have the same picture are not both asked for it at once, and one that never answers blocks nobody", "[photo]") {
  Camera host("host"), one("one"), two("two");
  enrol(host, one);
  enrol(host, two);
  const BookId book = make_id<BookId>(kNoon);
  const Bytes bytes = picture(100'000);
  const Digest hash = one.take(book, bytes);
  one.share(host, book);
  two.share(host, book);
  REQUIRE(two.files.add(book, bytes, ContentOrigin::fetched));
  Meeting first(one, host), second(two, host);
  while (!host.files.part_held(book, hash)) REQUIRE(first.deliver(1));
  second.deliver();
  second.push(second.to_guest, second.host.fetch(book, hash));
  CHECK(second.to_guest.empty());
  const std::deque<Bytes> silent = std::exchange(first.to_host, {});  // the first guest's answer does not come
  for (int i = 0; i < 62; ++i) {
    (void)first.host.tick();
    second.push(second.to_guest, second.host.tick());
  }
  second.deliver();
  CHECK(*host.files.read(book, hash) == bytes);
  // Its answer comes at last: it does no harm.
  for (const Bytes& frame : silent) first.push(first.to_guest, first.host.receive(frame));
  first.deliver();
  CHECK(first.host.status().state != SessionState::closed);
  CHECK(*host.files.read(book, hash) == bytes);
}
