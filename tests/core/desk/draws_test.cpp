#include "core/desk/draws.h"

#include <catch2/catch.hpp>

#include "core/desk/undo.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

std::vector<BracketLine> lines_of(std::initializer_list<const char*> names) {
  std::vector<BracketLine> out;
  for (const char* name : names) {
    BracketLine line;
    line.player = name;
    line.bye = std::string_view(name) == "bye";
    if (line.bye) line.player.clear();
    out.push_back(std::move(line));
  }
  return out;
}

struct Drawn : Desk {
  explicit Drawn(const std::string& name = "desk") : Desk(name) {}
  void bring_in() {
    NewDraw wanted;
    wanted.name = "Women's singles";
    wanted.lines = lines_of({"Okafor Ada", "bye", "Nakagura Rin", "Velt Jana", "Tamsin Ilse", "Orrin Bea", "", "Quill Mo"});
    wanted.lines[0].seed = 1;
    wanted.lines[6].qualifier = 1;
    append(add_draw(event, event_draws(*ledger, event), wanted, clock.now()));
  }
  [[nodiscard]] HeldDraw draw() const { return event_draws(*ledger, event).at(0); }
  [[nodiscard]] Outcome<Draft> won(int round, std::size_t line, EndOfMatch end = EndOfMatch::played) const {
    return note_winner(draw(), {round, line, end, "6-4 6-4", "Mara", clock.now()});
  }
  [[nodiscard]] std::optional<std::size_t> winner(int round, std::size_t match) const { return draw().draw->bracket().winner(round, match); }
};

template <class T>
std::string code(const Outcome<T>& outcome) {
  return outcome ? "done" : std::string(name_of(outcome.error().code));
}

}  // namespace

TEST_CASE("a draw is kept line by line and played on by who won") {
  Drawn room;
  room.bring_in();
  const HeldDraw fresh = room.draw();
  CHECK(fresh.rounds() == 3);
  CHECK(fresh.troubles.empty());
  CHECK(fresh.lines[0].seed == 1);
  CHECK(fresh.lines[1].bye);
  CHECK(fresh.lines[6].qualifier == 1);
  CHECK(room.winner(1, 0) == 0);  // by the bye
  room.append(room.won(1, 3));
  CHECK(room.winner(1, 1) == 3);
  room.append(room.won(2, 0, EndOfMatch::retired));
  CHECK(room.winner(2, 0) == 0);
  const HeldDraw played = room.draw();
  const auto* match = played.match(2, 0);
  REQUIRE(match != nullptr);
  CHECK(match->now.end == EndOfMatch::retired);
  CHECK(match->now.score == "6-4 6-4");
  CHECK(code(room.won(2, 3)) == "bad_input");   // has another winner
  CHECK(code(room.won(3, 0)) == "bad_input");   // the other half is not played
  CHECK(code(room.won(1, 1)) == "bad_input");   // a bye
  CHECK(code(room.won(1, 6)) == "bad_input");   // nobody there yet
  CHECK(code(room.won(9, 0)) == "bad_input");
  CHECK(code(room.won(1, 800)) == "bad_input");
  CHECK(code(take_back_winner(room.draw(), 1, 1)) == "bad_input");  // the second round is built on it
  room.append(take_back_winner(room.draw(), 2, 0));
  CHECK_FALSE(room.winner(2, 0));
  room.append(room.won(2, 3));
  CHECK(room.winner(2, 0) == 3);
}

TEST_CASE("a qualifier comes to a free line, and who withdraws leaves a walkover or a place to somebody else") {
  Drawn room;
  room.bring_in();
  BracketLine qualifier;
  qualifier.player = "Sorley Pia";
  qualifier.entry = DrawEntry::qualifier;
  room.append(put_on_line(room.draw(), 6, qualifier));
  CHECK(room.draw().lines[6].player == "Sorley Pia");
  CHECK(room.draw().places.at(6).now.via == EntryVia::qualifier);
  CHECK(code(put_on_line(room.draw(), 6, qualifier)) == "bad_input");  // has not withdrawn
  room.append(withdraw_line(room.draw(), 4, room.clock.now()));
  CHECK(room.winner(1, 2) == 5);
  BracketLine loser;
  loser.player = "Wilmot Eva";
  loser.entry = DrawEntry::lucky_loser;
  room.append(put_on_line(room.draw(), 4, loser));
  CHECK_FALSE(room.winner(1, 2));
  CHECK_FALSE(room.draw().lines[4].withdrawn);
  room.append(room.won(1, 4));
  CHECK(code(put_on_line(room.draw(), 4, qualifier)) == "bad_input");
  room.append(withdraw_line(room.draw(), 4, room.clock.now()));
  room.append(room.won(1, 7));
  CHECK(room.winner(2, 1) == 7);  // walked over
}

TEST_CASE("what two devices noted of one match while apart is a question, and what no longer fits is said and left out") {
  Drawn here("desk"), there("head");
  there.event = here.event;
  here.bring_in();
  meet(here, there, here.event);
  REQUIRE(there.draw().lines.size() == 8);
  here.append(here.won(1, 2));
  there.clock.advance(5 * kMinute);
  there.append(there.won(1, 3));
  there.append(there.won(2, 3));
  meet(here, there, here.event);
  CHECK(here.ledger->open_questions(here.event).size() == 1);
  CHECK(here.ledger->open_questions(here.event)[0].cell.tag == tag_of<MatchRecord>(&MatchRecord::winner));
  // The later word is shown until somebody says; both devices show the same.
  CHECK(here.winner(1, 1) == there.winner(1, 1));
  CHECK(here.winner(1, 1) == 3);
  CHECK(here.draw().troubles.empty());
  // The question is answered the other way: the second round can't be so.
  const HeldDraw held = here.draw();
  MatchRecord wanted = held.match(1, 1)->now;
  wanted.winner = 3;
  Draft answer(here.event, kEventBook, kActCloseQuestion);
  answer.put(held.match(1, 1)->seen, tag_of<MatchRecord>(&MatchRecord::winner), Value{std::int64_t{3}});
  here.append(answer);
  CHECK(here.winner(1, 1) == 2);
  CHECK_FALSE(here.winner(2, 0));
  REQUIRE(here.draw().troubles.size() == 1);
  CHECK(here.draw().troubles[0].message().find("Women's singles") != std::string::npos);
  CHECK(here.ledger->open_questions(here.event).empty());
}

TEST_CASE("one result that two devices noted alike while apart is one, and no question") {
  Drawn here("desk"), there("head");
  there.event = here.event;
  here.bring_in();
  meet(here, there, here.event);
  here.append(here.won(1, 2));
  there.append(there.won(1, 2));
  meet(here, there, here.event);
  CHECK(here.draw().matches.size() == 1);
  CHECK(here.ledger->open_questions(here.event).empty());
  CHECK(here.winner(1, 1) == 2);
}

TEST_CASE("qualifying is played in sections, and a draw that can't be is refused with its line") {
  Drawn room;
  NewDraw wanted;
  wanted.name = "Qualifying";
  wanted.kind = DrawKind::qualifying;
  wanted.sections = 2;
  wanted.lines = lines_of({"A", "B", "C", "D", "E", "F", "G", "H"});
  room.append(add_draw(room.event, {}, wanted, room.clock.now()));
  CHECK(room.draw().rounds() == 2);
  room.append(room.won(1, 0));
  room.append(room.won(1, 3));
  room.append(room.won(2, 3));
  CHECK(room.winner(2, 0) == 3);
  CHECK(code(room.won(3, 3)) == "bad_input");  // sections do not meet
  CHECK(code(set_play(room.draw(), 3, 0, {"Court 1"})) == "bad_input");
  room.append(set_play(room.draw(), 2, 1, {"Court 1", kMonday + kHour}));
  CHECK(room.draw().match(2, 1)->now.court == "Court 1");
  room.append(set_play(room.draw(), 2, 1, {"Court 2"}));  // the time stays
  CHECK(room.draw().match(2, 1)->now.court == "Court 2");
  CHECK(room.draw().match(2, 1)->now.not_before == kMonday + kHour);
  room.append(set_play(room.draw(), 2, 1, {std::nullopt, std::nullopt, true}));
  CHECK(room.draw().match(2, 1)->now.court == "Court 2");
  CHECK_FALSE(room.draw().match(2, 1)->now.not_before);
  CHECK(code(set_play(room.draw(), 2, 1, {})) == "bad_input");
  CHECK_FALSE(room.winner(2, 1));

  const auto held = event_draws(*room.ledger, room.event);
  const auto refused = [&](NewDraw draw) { return add_draw(room.event, held, draw, 1); };
  CHECK(code(refused(wanted)) == "bad_input");  // the name is taken
  wanted.name = "Second qualifying";
  wanted.sections = 0;
  CHECK(code(refused(wanted)) == "bad_input");
  wanted.sections = 3;
  CHECK(code(refused(wanted)) == "bad_input");
  NewDraw twice{"Main", DrawKind::knock_out, lines_of({"A", "B", "a", "D"})};
  const auto fault = refused(twice);
  REQUIRE_FALSE(fault);
  CHECK(fault.error().message().find("twice") != std::string::npos);
  CHECK(fault.error().message().find("line 3") != std::string::npos);
  CHECK(code(refused({"", DrawKind::knock_out, lines_of({"A", "B"})})) == "bad_input");
  CHECK(code(refused({"Main", DrawKind::knock_out, lines_of({"A", "B", "C"})})) == "bad_input");
  room.append(remove_draw(room.draw()));
  CHECK(event_draws(*room.ledger, room.event).empty());
}

TEST_CASE("a draw of 256 pairs goes into one entry, and undo takes it away again") {
  Drawn room;
  NewDraw wanted;
  wanted.name = "Doubles";
  for (int i = 0; i < 256; ++i) {
    BracketLine line;
    line.player = "Player " + std::to_string(i);
    line.partner = "Partner " + std::to_string(i);
    line.rating = 1500 + i;
    if (i < 32) line.seed = i + 1;
    wanted.lines.push_back(line);
  }
  const Committed done = room.append(add_draw(room.event, {}, wanted, room.clock.now()));
  CHECK(room.draw().rounds() == 8);
  CHECK(room.draw().lines[200].partner == "Partner 200");
  CHECK(room.draw().lines[200].rating == 1700);
  room.append(undo(*room.ledger, room.event, done.dot.seq));
  CHECK(event_draws(*room.ledger, room.event).empty());
}

TEST_CASE("a round-robin group is kept in the book: results, withdrawals, what two devices noted, and its standing") {
  Drawn room;
  NewDraw wanted;
  wanted.name = "Group A";
  wanted.kind = DrawKind::round_robin;
  for (const char* name : {"Osmer Ilse", "Tarn Bela", "Quill Jo", "Vantreel Mira"}) {
    BracketLine line;
    line.player = name;
    wanted.lines.push_back(line);
  }
  room.append(add_draw(room.event, {}, wanted, room.clock.now()));
  const auto group = [&] {
    const auto draws = event_draws(*room.ledger, room.event);
    REQUIRE(draws.size() == 1);
    return draws[0];
  };
  REQUIRE(group().group);
  CHECK_FALSE(group().draw);
  CHECK(group().rounds() == 3);
  CHECK(group().matches_in(1) == 2);
  CHECK(group().matches_in(4) == 0);
  const auto [one, other] = group().sides(1, 0);
  room.append(note_winner(group(), {1, *other, EndOfMatch::played, "6-4 6-4", "Mara", room.clock.now()}));
  CHECK(group().winner(1, 0) == other);
  CHECK(group().group->standing().front() == *other);
  CHECK(code(note_winner(group(), {1, *one, EndOfMatch::played, "", "Mara", room.clock.now()})) == "bad_input");  // it has a winner
  CHECK(code(note_winner(group(), {4, *one, EndOfMatch::played, "", "Mara", room.clock.now()})) == "bad_input");
  room.append(take_back_winner(group(), 1, 0));
  CHECK_FALSE(group().winner(1, 0));
  CHECK(code(take_back_winner(group(), 1, 0)) == "not_found");
  room.append(withdraw_line(group(), *one, room.clock.now()));
  CHECK(group().winner(1, 0) == other);  // what is not played is walked over
  CHECK(code(withdraw_line(group(), *one, room.clock.now())) == "bad_input");
  CHECK(code(note_winner(group(), {2, *one, EndOfMatch::played, "", "Mara", room.clock.now()})) == "bad_input");
  CHECK(code(put_on_line(group(), *one, wanted.lines[0])) == "bad_input");
  wanted.lines.resize(2);
  wanted.name = "Group B";
  CHECK(code(add_draw(room.event, {}, wanted, room.clock.now())) == "bad_input");
}
