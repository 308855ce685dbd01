// A bundle from one device to another: what crosses, what may not, who is asked.

#include "core/store/database.h"
#include "sync/carry/bundle_sight.h"
#include "tests/sync/carry/carriers.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {
}  // namespace

TEST_CASE("a bundle brings every book to the device that it is for, whole and proved") {
  SyncDevice desk("desk"), tablet("tablet");
  fill_shelves(desk, 12, 5);
  const Carried bundle = make_for(desk, tablet);
  CHECK(bundle.made.books == 12);
  CHECK(bundle.made.entries == 60);
  CHECK(bundle.made.bytes == bundle.file.size());
  const TakenBundle taken = take(tablet, bundle.file);
  CHECK(taken.complete());
  CHECK(taken.applied == 60);
  CHECK(taken.manifest.maker.device == "desk");
  CHECK(taken.id == bundle.made.id);
  CHECK(same_books(desk, tablet));
  CHECK(tablet.ledger->verify().faults.empty());

  const TakenBundle again = take(tablet, bundle.file);
  CHECK(again.complete());
  CHECK(again.applied == 0);
  CHECK(again.known == 60);
  CHECK(tablet.ledger->quarantine().empty());

  // Handed on by who got it: chains of others carry their seals.
  SyncDevice third("third");
  CHECK(take(third, make_for(tablet, third).file).complete());
  CHECK(same_books(desk, third));
}

TEST_CASE("a bundle with a passphrase opens with the same words however they were typed, and with no others") {
  SyncDevice desk("desk"), tablet("tablet");
  fill_shelves(desk, 2, 3);
  const Carried bundle = make_with(desk, "schöne Grüße");  // composed letters
  const auto wrong = try_take(tablet, bundle.file, "schone Grusse");
  REQUIRE_FALSE(wrong);
  CHECK(wrong.error().code == FaultCode::untrusted);
  CHECK(wrong.error().what.find("not the passphrase") != std::string::npos);
  const auto none = try_take(tablet, bundle.file);
  REQUIRE_FALSE(none);
  CHECK(none.error().code == FaultCode::bad_input);
  CHECK(tablet.ledger->books().empty());
  CHECK(take(tablet, bundle.file, " scho\u0308ne Gru\u0308ße ").complete());  // decomposed
  CHECK(same_books(desk, tablet));

  Bytes out;
  const auto weak = make_bundle(*desk.ledger, *desk.devices, wish_for(desk, ForPassphrase{"short", kQuick}), sink_of(out));
  REQUIRE_FALSE(weak);
  CHECK(weak.error().code == FaultCode::bad_input);
  const std::string made = make_passphrase();
  CHECK(made.size() == 29);
  CHECK(made != make_passphrase());
}

TEST_CASE("a bundle for one device does not open on another, and does not say to strangers whose it is") {
  SyncDevice desk("desk"), tablet("tablet"), other("other");
  fill_shelves(desk, 1, 1);
  const Carried bundle = make_for(desk, tablet);
  const auto wrong = try_take(other, bundle.file);
  REQUIRE_FALSE(wrong);
  CHECK(wrong.error().code == FaultCode::untrusted);
  CHECK(wrong.error().what == "this bundle is for another device");
  const std::string all(bundle.file.begin(), bundle.file.end());
  for (const SyncDevice* device : {&desk, &tablet})
    CHECK(all.find(std::string(as_text(device->ledger->self().key))) == std::string::npos);
  CHECK(all.find("word") == std::string::npos);
  const auto no_key = make_bundle(*desk.ledger, *desk.devices, wish_for(desk, PublicKey{}), [](ByteView) -> Outcome<> { return {}; });
  REQUIRE_FALSE(no_key);
  CHECK(no_key.error().code == FaultCode::bad_input);
}

TEST_CASE("concurrent answers that meet by bundle become an open question, as they do in a session") {
  SyncDevice desk("desk"), bench("bench");
  const BookId book = desk.ledger->create_book_id();
  desk.put(book, kOne, kGuarded, std::string("25 kg"));
  (void)take(bench, make_for(desk, bench).file);
  desk.put(book, kOne, kGuarded, std::string("24 kg"));
  bench.put(book, kOne, kGuarded, std::string("26 kg"));
  (void)take(bench, make_for(desk, bench).file);
  (void)take(desk, make_for(bench, desk).file);
  CHECK(same_books(desk, bench));
  CHECK(bench.ledger->open_questions(book).size() == 1);
  CHECK(desk.ledger->open_questions(book).size() == 1);
}

TEST_CASE("fields that a device does not know are kept and carried on") {
  SyncDevice newer("newer"), old("old"), third("third");
  const BookId book = newer.ledger->create_book_id();
  const UnknownValue strange{static_cast<std::uint8_t>(15 * 4 + 2), Bytes{3, 1, 2, 3}};
  newer.put(book, kOne, FieldTag{77}, strange);
  newer.put(book, kOne, FieldTag{78}, std::string("what only newer programs know"));
  CHECK(take(old, make_for(newer, old).file).complete());
  CHECK(take(third, make_for(old, third).file).complete());
  CHECK(same_books(newer, third));
  CHECK(third.ledger->entity(book, kOne)->get_as<UnknownValue>(FieldTag{77}) == strange);
}

TEST_CASE("what may not leave is refused by name, or left out of everything") {
  SyncDevice desk("desk"), tablet("tablet");
  fill_shelves(desk, 3, 2);
  BundleWish wish = wish_for(desk, tablet.ledger->self().key);
  const BookId kept = wish.books[1];
  wish.may_leave = [&](const BookId& book, BookKind) { return book != kept; };
  Bytes out;
  const auto refused = make_bundle(*desk.ledger, *desk.devices, wish, sink_of(out));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  CHECK(refused.error().where == "book " + kept.hex());
  CHECK(out.empty());
  wish.leave_out = true;
  const Carried bundle = make(desk, wish);
  CHECK(bundle.made.left_out == std::vector{kept});
  CHECK(take(tablet, bundle.file).books.size() == 2);
  CHECK_FALSE(tablet.ledger->book(kept));

  wish.leave_out = false;
  wish.books = {make_id<BookId>(kNoon)};
  CHECK(make_bundle(*desk.ledger, *desk.devices, wish, sink_of(out)).error().code == FaultCode::not_found);
}

TEST_CASE("a book whose player withdrew here is left out of what is taken in") {
  SyncDevice desk("desk"), tablet("tablet");
  fill_shelves(desk, 2, 2);
  (void)take(tablet, make_for(desk, tablet).file);
  const auto books = books_of(desk);
  for (const BookId& book : books) desk.put(book, kOne, kLabel, std::string("more"));
  TakeOptions options = taking(tablet);
  options.may_take = [&](const BookId& book, BookKind, const BookId&) { return book != books[0]; };
  const auto taken = try_take(tablet, make_for(desk, tablet).file, {}, options);
  REQUIRE(taken);
  CHECK(taken->withheld == std::vector{books[0]});
  CHECK(taken->applied == 1);
  CHECK(tablet.ledger->book(books[0])->heads != desk.ledger->book(books[0])->heads);
  CHECK(tablet.ledger->book(books[1])->heads == desk.ledger->book(books[1])->heads);
  // What was left out is not in the receipt.
  const Receipt receipt = receipt_of(*tablet.ledger, *taken);
  REQUIRE(receipt.books.size() == 1);
  CHECK(receipt.books[0].book == books[1]);
}

TEST_CASE("a bundle for the room of one event is refused in another's") {
  SyncDevice desk("desk"), tablet("tablet");
  fill_shelves(desk, 1, 1);
  BundleWish wish = wish_for(desk, tablet.ledger->self().key);
  wish.room = make_id<BookId>(kNoon);
  const Carried bundle = make(desk, wish);
  const auto refused = try_take(tablet, bundle.file);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  TakeOptions options = taking(tablet);
  options.room = wish.room;
  CHECK(try_take(tablet, bundle.file, {}, options));
}

TEST_CASE("a forgotten book does not come back by bundle, and a bundle tells of it") {
  SyncDevice desk("desk"), tablet("tablet"), third("third");
  fill_shelves(desk, 2, 2);
  const auto books = books_of(desk);
  const Carried before = make_for(desk, tablet), for_third = make_for(desk, third);
  (void)take(tablet, before.file);
  (void)take(third, for_third.file);
  REQUIRE(tablet.ledger->forget(books[0]));
  const TakenBundle again = take(tablet, before.file);
  CHECK(again.forgotten == std::vector{books[0]});
  CHECK_FALSE(tablet.ledger->book(books[0]));
  CHECK(receipt_of(*tablet.ledger, again).books.size() == 1);

  // From a device that is not known and vouches for nobody: heard, not obeyed.
  const Carried news = make_for(tablet, third);
  CHECK(news.made.manifest.stubs == 1);
  CHECK(take(third, news.file).erased == 0);
  CHECK(third.ledger->book(books[0]));
  // From one that may order it.
  enrol(third, tablet, Role::desk);
  CHECK(take(third, make_for(tablet, third).file).erased == 1);
  CHECK_FALSE(third.ledger->book(books[0]));
  CHECK(third.ledger->is_forgotten(books[0]));
  CHECK(third.ledger->forgotten()[0].heard_from == tablet.ledger->self().key);

  BundleWish wish = wish_for(tablet, third.ledger->self().key);
  wish.books = {books[0]};
  const auto asked = make_bundle(*tablet.ledger, *tablet.devices, wish, [](ByteView) -> Outcome<> { return {}; });
  REQUIRE_FALSE(asked);
  CHECK(asked.error().what.find("forgotten") != std::string::npos);
}

TEST_CASE("a bundle leaves out the books that its maker's role may not begin here, and brings the rest") {
  SyncDevice host("host"), maker("maker");
  enrol(host, maker, Role::stringer);
  const BookId may = make_id<BookId>(kNoon), may_not = make_id<BookId>(kNoon + 1), here = make_id<BookId>(kNoon + 2);
  host.put(here, kOne, kLabel, std::string("held already"));
  pour(host, maker, here);
  for (const BookId& book : {may, may_not, here}) maker.put(book, make_id<EntityId>(kNoon), kLabel, std::string("mine"));
  TakeOptions options = taking(host);
  options.rights.may_begin = [&](Role role, const BatchBook& book) { return role == Role::head || book.id == may; };
  const Carried bundle = make_for(maker, host);
  const DeviceKey& key = host.ledger->key();
  const auto sight = look_into(source_of(bundle.file), {&key, {}}, options);
  REQUIRE(sight);
  CHECK(sight->not_begun == std::vector{may_not});
  CHECK(sight->new_books == 1);
  CHECK(sight->new_entries == 2);
  const auto taken = try_take(host, bundle.file, {}, options);
  REQUIRE(taken);
  CHECK_FALSE(taken->fault);
  CHECK(taken->not_begun == std::vector{may_not});
  CHECK_FALSE(host.ledger->book(may_not));
  CHECK(host.ledger->book(may));
  CHECK(host.ledger->heads(here) == maker.ledger->heads(here));
  CHECK_FALSE(receipt_of(*host.ledger, *taken).complete);
}

TEST_CASE("who borrows a name of the room in a bundle is named by its key, a device that is known is not") {
  SyncDevice host("server"), maker("maker"), desk("desk by the door"), borrower("Desk by the door");
  enrol(host, maker, Role::stringer);
  enrol(host, desk, Role::desk);
  REQUIRE(host.devices->rename(desk.ledger->self().key, "desk by the door"));
  const BookId book = make_id<BookId>(kNoon);
  desk.put(book, kOne, kLabel, std::string("its own"));
  pour(desk, borrower, book);
  borrower.put(book, kOne, kCount, std::int64_t{7});
  pour(borrower, maker, book);
  REQUIRE(try_take(host, make_for(maker, host).file));
  std::set<std::string> names;
  for (const KnownAuthor& author : host.ledger->authors()) names.insert(author.card.device);
  CHECK(names.contains("desk by the door"));
  CHECK_FALSE(names.contains("Desk by the door"));
  CHECK(names.contains("? " + to_hex(borrower.ledger->self().key).substr(0, 8)));
  CHECK(host.ledger->verify().faults.empty());
}

TEST_CASE("a backup put back on a new tablet of the same name, and a bundle of this device's own, leave names as they are") {
  const DeviceKey key = DeviceKey::generate();
  SyncDevice old("Ilse's tablet", ":memory:", key), bo("Ilse's Tablet"), fresh("Ilse's tablet"), again("Ilse's tablet", ":memory:", key);
  const BookId book = make_id<BookId>(kNoon);
  old.put(book, kOne, kLabel, std::string("its own"));
  pour(old, bo, book);
  bo.put(book, kOne, kCount, std::int64_t{7});
  pour(bo, old, book);
  const auto names = [](const SyncDevice& device) {
    std::set<std::string> out;
    for (const KnownAuthor& author : device.ledger->authors()) out.insert(author.card.device);
    return out;
  };
  BundleWish wish = wish_for(old, ForPassphrase{"ferry to the island", kQuick});
  wish.backup = true;
  CHECK(take(fresh, make(old, wish).file, "ferry to the island").complete());
  CHECK(names(fresh).contains("Ilse's Tablet"));
  CHECK(names(fresh) == names(old));
  CHECK(take(again, make_with(old, "ferry to the island").file, "ferry to the island").complete());
  CHECK(names(again) == names(old));
}

TEST_CASE("a bundle brings nothing that its maker's role would not let it bring in a session") {
  SyncDevice host("host"), maker("maker");
  enrol(host, maker, Role::stringer);
  const BookId book = make_id<BookId>(kNoon);
  maker.put(book, kOne, kLabel, std::string("mine"));
  TakeOptions options = taking(host);
  std::set<std::pair<Role, ActionKind>> asked;
  options.rights.may_write = [&](Role role, const BatchBook&, ActionKind action) {
    asked.emplace(role, action);
    return role == Role::head;
  };
  const auto refused = try_take(host, make_for(maker, host).file, {}, options);
  REQUIRE(refused);
  REQUIRE(refused->fault);
  CHECK(refused->fault->code == FaultCode::refused);
  CHECK_FALSE(refused->complete());
  CHECK(asked == std::set<std::pair<Role, ActionKind>>{{Role::stringer, kEdit}});
  CHECK_FALSE(host.ledger->book(book));
  // By a head it comes; and then what follows is not held up, whatever role its author has now.
  REQUIRE(host.devices->set_role(maker.ledger->self().key, Role::desk));
  SyncDevice head("head");
  enrol(host, head, Role::head);
  pour(maker, head, book);
  CHECK(try_take(host, make_for(head, host).file, {}, options)->complete());
  CHECK(host.ledger->book(book));
  maker.put(book, kOne, kLabel, std::string("and on"));
  CHECK(try_take(host, make_for(maker, host).file, {}, options)->complete());
}

TEST_CASE("under a key that nobody enrolled a bundle brings no more than its maker may, also after something harmless") {
  SyncDevice host("host"), maker("maker"), made_up("made up");
  enrol(host, maker, Role::stringer);
  constexpr ActionKind kHeadsOnly{9};
  TakeOptions options = taking(host);
  options.rights.may_write = [](Role role, const BatchBook&, ActionKind action) { return role == Role::head || action != kHeadsOnly; };
  const BookId book = make_id<BookId>(kNoon);
  made_up.put(book, kOne, kLabel, std::string("harmless"));
  pour(made_up, maker, book);
  CHECK(try_take(host, make_for(maker, host).file, {}, options)->complete());
  Draft more(book, kShelf, kHeadsOnly);
  more.put(*made_up.ledger->entity(book, kOne), kLabel, std::string("hijacked"));
  REQUIRE(made_up.ledger->append(more));
  pour(made_up, maker, book);
  const auto refused = try_take(host, make_for(maker, host).file, {}, options);
  REQUIRE(refused);
  REQUIRE(refused->fault);
  CHECK(refused->fault->code == FaultCode::refused);
  CHECK(host.ledger->entity(book, kOne)->get_as<std::string>(kLabel) == "harmless");
  // By a head it comes.
  REQUIRE(host.devices->set_role(maker.ledger->self().key, Role::head));
  CHECK(try_take(host, make_for(maker, host).file, {}, options)->complete());
  CHECK(host.ledger->entity(book, kOne)->get_as<std::string>(kLabel) == "hijacked");
}

TEST_CASE("who made it counts: a stranger has to be let in, a revoked device and a reader are not") {
  SyncDevice host("host"), maker("maker");
  fill_shelves(maker, 1, 2);
  const Carried sealed = make_for(maker, host), open = make_with(maker, "ferry to the island");
  TakeOptions options = taking(host);
  options.from_stranger = false;
  const auto stranger = try_take(host, sealed.file, {}, options);
  REQUIRE_FALSE(stranger);
  CHECK(stranger.error().code == FaultCode::untrusted);
  CHECK(host.ledger->books().empty());
  enrol(host, maker, Role::reader);
  CHECK(try_take(host, sealed.file).error().what.find("reader") != std::string::npos);
  CHECK(host.ledger->books().empty());
  enrol(host, maker, Role::stringer);
  CHECK(try_take(host, sealed.file, {}, options)->maker == KnownAs::member);
  REQUIRE(host.devices->revoke(maker.ledger->self().key));
  const auto revoked = try_take(host, open.file, "ferry to the island");
  REQUIRE_FALSE(revoked);
  CHECK(revoked.error().code == FaultCode::refused);
  CHECK(revoked.error().what.find("revoked") != std::string::npos);
  // Its entries by way of others are taken and counted, as in a session.
  SyncDevice other("other");
  (void)take(other, open.file, "ferry to the island");
  other.put(books_of(other)[0], kOne, kLabel, std::string("mine"));
  SyncDevice fresh("fresh");
  enrol(fresh, maker);
  REQUIRE(fresh.devices->revoke(maker.ledger->self().key));
  CHECK(take(fresh, make_for(other, fresh).file).complete());
  CHECK(fresh.devices->devices()[0].late_entries == 2);

  Bytes out;
  const auto to_revoked = make_bundle(*host.ledger, *host.devices, wish_for(host, maker.ledger->self().key), sink_of(out));
  REQUIRE_FALSE(to_revoked);
  CHECK(to_revoked.error().code == FaultCode::refused);
}

TEST_CASE("who knows the passphrase of a bundle gives it without being known here") {
  SyncDevice maker("maker"), tablet("tablet");
  fill_shelves(maker, 1, 1);
  TakeOptions options = taking(tablet);
  options.from_stranger = false;
  CHECK(try_take(tablet, make_with(maker, "ferry to the island").file, "ferry to the island", options)->maker == KnownAs::stranger);
}

TEST_CASE("after a bundle both devices still come to agree in a session, and nothing crosses twice") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  fill_shelves(host, 6, 4);
  {
    Loopback first(guest, host);
    first.deliver();
  }
  fill_shelves(host, 3, 4);
  fill_shelves(guest, 2, 3);
  CHECK(take(guest, make_for(host, guest).file).maker == KnownAs::author);
  CHECK(take(host, make_for(guest, host).file).complete());
  Loopback second(guest, host);
  second.deliver();
  second.changed();
  CHECK(second.guest.status().state == SessionState::agreed);
  CHECK(second.host.status().state == SessionState::agreed);
  CHECK(same_books(host, guest));
  CHECK(same_books(guest, host));
}

TEST_CASE("a bundle of a tablet that was copied brings the other branch, which is kept aside, told, and not counted as held") {
  const TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    SyncDevice before("tablet", folder / "original.db", key);
    before.put(book, kOne, kGuarded, std::string("52"));
  }
  std::filesystem::copy_file(folder / "original.db", folder / "copy.db");
  // As an image of the whole disk would be: even the file's number and time are the same.
  SQLite::Database((folder / "copy.db").string(), SQLite::OPEN_READWRITE).exec("DELETE FROM meta WHERE key='place'");
  SyncDevice original("tablet", folder / "original.db", key), copy("tablet", folder / "copy.db", key), third("third");
  REQUIRE(original.ledger->self() == copy.ledger->self());
  original.put(book, kOne, kGuarded, std::string("51"));
  copy.put(book, kOne, kGuarded, std::string("53"));
  CHECK(take(third, make_for(original, third).file).complete());
  const Carried other = make_for(copy, third);
  const TakenBundle taken = take(third, other.file);
  CHECK(taken.forks == 1);
  CHECK_FALSE(taken.complete());
  CHECK(third.ledger->quarantine().size() == 1);
  // The copy sees from the receipt that its branch is not there.
  const auto lines = compare_receipt(*copy.ledger, receipt_of(*third.ledger, taken));
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].parted == 1);
  // Where the other branch comes to the copy itself, it says its own words again.
  CHECK(take(copy, make_with(original, "ferry to the island").file, "ferry to the island").forks == 0);
  CHECK(copy.ledger->self() != original.ledger->self());
  CHECK(copy.ledger->open_questions(book).size() == 1);
  CHECK(copy.ledger->verify().faults.empty());
}

TEST_CASE("the size that is told beforehand is about what is written") {
  SyncDevice desk("desk"), tablet("tablet");
  fill_shelves(desk, 40, 60);
  const BundleWish wish = wish_for(desk, tablet.ledger->self().key);
  const auto size = bundle_size(*desk.ledger, wish);
  REQUIRE(size);
  const Carried bundle = make(desk, wish);
  CHECK(size->books == 40);
  CHECK(size->entries == 2400);
  CHECK(static_cast<double>(size->bytes) == Approx(static_cast<double>(bundle.file.size())).epsilon(0.35));
}

TEST_CASE("names without end that were taken in earlier keep no bundle from being made") {
  SyncDevice desk("desk"), tablet("tablet");
  const BookId book = make_id<BookId>(kNoon);
  for (int i = 0; i < 3; ++i) {
    SyncDevice named(std::string(2'000'000, 'n'));
    named.put(book, make_id<EntityId>(kNoon), kLabel, "label " + std::to_string(i));
    REQUIRE(desk.ledger->ingest(named.ledger->missing(book, {}, 1 << 30), 99));
  }
  CHECK(bundle_size(*desk.ledger, wish_for(desk, tablet.ledger->self().key)));
  CHECK(take(tablet, make_for(desk, tablet).file).complete());
  CHECK(tablet.ledger->heads(book).size() == 3);
}

TEST_CASE("a server's bundle with a word that somebody planted in a book does not have the tablet hand on what it holds of it") {
  SyncDevice server("server"), bad("bad"), tablet("tablet");
  enrol(server, bad);
  enrol(server, tablet, Role::desk);
  const BookId book = make_id<BookId>(kNoon), fresh = make_id<BookId>(kNoon + 1);
  tablet.put(book, kOne, kLabel, std::string("a whole career"));
  REQUIRE(tablet.devices->remember_host({server.ledger->self().key, "server", {}, {}, Role::desk, kNoon}));
  bad.put(book, make_id<EntityId>(kNoon), kLabel, std::string("planted"));
  bad.share(server, book);
  server.put(fresh, kOne, kLabel, std::string("new here"));
  Loopback hostile(bad, server);
  hostile.deliver();
  for (int carried = 0; carried < 2; ++carried) {
    CHECK(take(tablet, make_for(server, tablet).file).complete());
    CHECK_FALSE(tablet.peers->in_scope(tablet.peer_number(server), book));
    CHECK(tablet.peers->in_scope(tablet.peer_number(server), fresh));
    Loopback session(tablet, server);
    session.deliver();
    CHECK(session.guest.status().state == SessionState::agreed);
    CHECK(session.host.status().state == SessionState::agreed);
    CHECK(server.ledger->heads(book).size() == 1);
    CHECK(tablet.ledger->heads(book).size() == 2);
  }
}
