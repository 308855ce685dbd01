// The third event: no server and no network. What people carry is a file on a stick and a code on a bag tag.

#include <algorithm>
#include <stdexcept>

#include "tests/story/story.h"
#include "tests/story/story_json.h"

namespace weavelog::testing {
namespace {

namespace json = boost::json;

constexpr const char* kRidgeEntries =
    "family_name,given_name,country,birth_year\n"
    "Vargelin,Odile,FRA,2001\n"
    "Vargelin,Odette,FRA,2001\n"
    "Vetrova,Zarina,KAZ,2000\n"
    "Quillback,Ines,PRT,2002\n";

/// What is agreed with somebody who is not seen before, in words of a command.
std::vector<std::string> first_time(const std::string& family, const std::string& given, const std::string& country, const std::string& year,
                                    const std::string& tension) {
  std::vector<std::string> out{"drop-off", "--new", "--rackets", "1", "--mains", tension, "--crosses", tension, "--ready-by", "18:30"};
  for (const std::string& field : {"family_name=" + family, "given_name=" + given, "country=" + country, "birth_year=" + year})
    out.insert(out.end(), {"--person", field});
  for (const char* field : {"mains_string=Tarnbrook Cord", "crosses_string=Tarnbrook Cord", "mains_gauge=1.25mm", "crosses_gauge=1.25mm", "mains_supply=reel",
                            "mains_owner=room", "crosses_supply=reel", "crosses_owner=room", "pieces=1", "knots=2"})
    out.insert(out.end(), {"--set", field});
  return out;
}

}  // namespace

bool Story::knows(const Tablet& tablet, const std::string& name) {
  const json::value found = ask(tablet, {"find", name}, {}, {0, 4});
  return found.is_array() && !found.as_array().empty();
}

std::string Story::consent_of(const Tablet& tablet, const std::string& name) {
  const json::value found = ask(tablet, {"find", name}, {}, {0, 4});
  return found.is_array() && !found.as_array().empty() ? text_at(found.as_array().at(0), "consent") : std::string();
}

std::string Story::band_at_ridge(const std::string& given) {
  const json::value arrival = ask(ridge_, {"arrival"});
  for (const json::value& entry : arrival.as_object().at("entries").as_array())
    if (text_at(entry, "given_name") == given) return text_at(entry, "band");
  throw std::runtime_error("nobody called " + given + " is on the list of the Ridge");
}

void Story::first_time_at_harbour(const std::string& family, const std::string& given, const std::string& country, const std::string& year) {
  until(family + "'s drop-off", [&] { return knows(desk_, family); }, [&] {
    auto words = first_time(family, given, country, year, "23kg");
    words.emplace_back("--confirm");
    act(desk_, words);
  });
  until(family + "'s consent", [&] { return consent_of(desk_, family) == "any_room"; }, [&] { act(desk_, {"consent", family, "any_room", "--confirm"}); });
}

void Story::two_more_at_harbour() {
  options_.tell("Two more hand over one racket each, and agree that any room that they walk into may have their setups: Зарина Ветрова, Halina Środziak.");
  first_time_at_harbour("Ветрова", "Зарина", "KAZ", "2000");
  first_time_at_harbour("Środziak", "Halina", "POL", "1999");
  exchange(desk_, harbour_);
  exchange(stringer_, harbour_);
  if (!knows(stringer_, "Środziak")) throw std::runtime_error("the stringer has not got the two");
}

void Story::withdrawn_and_lost() {
  options_.tell("Halina Środziak withdraws: nothing of hers leaves the desk any more, and then it is erased, on every tablet that is met.");
  static_cast<void>(ask(desk_, {"card", "make", "Środziak"}));
  until("the withdrawal", [&] { return consent_of(desk_, "Środziak") == "withdrawn" || !knows(desk_, "Środziak"); },
        [&] { act(desk_, {"consent", "Środziak", "withdrawn", "--confirm"}); });
  static_cast<void>(ask(desk_, {"card", "make", "Środziak"}, {}, {1, 4}));
  static_cast<void>(ask(desk_, {"bundle", "make", path("halina.bundle"), "--player", "Środziak", "--words"}, {}, {1, 4}));
  until("the forgetting", [&] { return !knows(desk_, "Środziak"); }, [&] { act(desk_, {"forget", "Środziak", "--confirm"}); });
  exchange(desk_, harbour_);
  exchange(stringer_, harbour_);
  if (knows(stringer_, "Środziak")) throw std::runtime_error("the stringer still knows her who withdrew");

  options_.tell("The desk's tablet is lost. The head shuts it out; whoever found it exchanges nothing, everybody else goes on.");
  const auto revoked = [&] {
    const json::value devices = ask(head_, {"devices"}, {}, {0, 1});
    if (!devices.is_array()) return false;
    return std::any_of(devices.as_array().begin(), devices.as_array().end(), [&](const json::value& device) {
      return text_at(device, "name") == desk_.name && !text_at(device, "revoked").empty();
    });
  };
  until("the revocation", revoked, [&] {
    if (!harbour_.runs()) harbour_.start();
    act(head_, {"revoke", desk_.name});
  });
  // The finder's exchange comes to nothing; the head's to an agreement.
  static_cast<void>(ask(desk_, {"exchange", "--seconds", "5"}, {}, {1}));
  exchange(head_, harbour_);
}

void Story::third_event() {
  options_.tell("The Ridge has neither server nor network. A colleague makes the event on her tablet and reads the entry list.");
  until("the event", [&] { return !ask(ridge_, {"events"}, {}, {0, 4}).as_array().empty(); }, [&] { act(ridge_, {"new-event", "Ridge Invitational"}); });
  const auto entries = [&] { return ask(ridge_, {"export", "event"}).as_object().at("entries").as_array().size(); };
  until("the list", [&] { return entries() == 4; }, [&] { act(ridge_, {"import", "entries", file("ridge.csv", kRidgeEntries)}); });
  if (band_at_ridge("Odile") != "new") throw std::runtime_error("a new tablet knows somebody");

  options_.tell("The stringer hands over Odile's book as a file, sealed for that tablet. A copy that breaks off gives nothing wrong; the whole one, read twice, her history.");
  const std::string key = text_at(ask(ridge_, {"bundle", "key"}), "key"), bundle = path("odile.bundle");
  const auto whole = [&] {
    const json::value shown = ask(ridge_, {"bundle", "show", bundle}, {}, {0, 1, 4});
    return shown.is_object() && shown.as_object().contains("whole") && shown.as_object().at("whole") == true;
  };
  until("the bundle", whole, [&] { act(stringer_, {"bundle", "make", bundle, "--replace", "--player", "Vargelín", "--to", key}); });
  until("its reading", [&] { return history(ridge_).size() == 7; }, [&] { act(ridge_, {"bundle", "read", bundle, "--from-stranger"}); });
  static_cast<void>(ask(ridge_, {"bundle", "read", bundle, "--from-stranger"}));
  if (const std::string band = band_at_ridge("Odile"); band != "known") throw std::runtime_error("Odile is " + band + " at the Ridge");

  options_.tell("Her twin is on the list too, and is not taken for her: Odette is new, hands over a racket, and the two are told apart for good.");
  if (band_at_ridge("Odette") == "known") throw std::runtime_error("the twin is taken for Odile");
  const auto books = [&](const std::string& name) {
    const json::value found = ask(ridge_, {"find", name}, {}, {0, 4});
    return found.is_array() ? found.as_array() : json::array();
  };
  until("Odette's drop-off", [&] { return books("Odette").size() == 1; }, [&] {
    auto words = first_time("Vargelin", "Odette", "FRA", "2001", "26kg");
    words.emplace_back("--confirm");
    act(ridge_, words);
  });
  const std::string odile = text_at(books("Odile").at(0), "book"), odette = text_at(books("Odette").at(0), "book");
  until("the two are told apart", [&] {
    const json::value links = ask(ridge_, {"export", "player", odette}).as_object().at("links");
    return std::any_of(links.as_array().begin(), links.as_array().end(), [](const json::value& link) { return text_at(link, "said") == "other_person"; });
  }, [&] { act(ridge_, {"link", odile, odette, "--different"}); });
  if (ask(ridge_, {"linked", odette}).as_object().at("books").as_array().size() != 1) throw std::runtime_error("the twins are linked");

  options_.tell("Зарина Ветрова has only the card on her bag, which does not say when she was born. It is read; on the list, in Latin letters, she is found and asked about.");
  until("the card", [&] { return knows(ridge_, "Ветрова"); }, [&] { act(ridge_, {"card", "read", zarinas_card_, "--confirm"}); });
  if (const std::string band = band_at_ridge("Zarina"); band != "likely") throw std::runtime_error("Зарина is " + band + " at the Ridge");
  std::string forged = zarinas_card_;
  forged.back() = forged.back() == 'A' ? 'B' : 'A';
  static_cast<void>(ask(ridge_, {"card", "read", forged, "--confirm"}, {}, {1}));

  const json::value arrival = ask(ridge_, {"arrival"});
  for (const json::value& entry : arrival.as_object().at("entries").as_array()) at_the_ridge_.push_back(text_at(entry, "band"));

  options_.tell("Last year somebody at the Ridge had begun a book for Odile under a slip of the pen. Both are linked: one person, seven rackets and one.");
  until("the old book", [&] { return knows(ridge_, "Vargellin"); }, [&] {
    auto words = first_time("Vargellin", "Odile", "FRA", "2001", "25kg");
    words.emplace_back("--confirm");
    act(ridge_, words);
  });
  const std::string old = text_at(books("Vargellin").at(0), "book");
  const auto linked = [&] { return ask(ridge_, {"linked", odile}, {}, {0, 3}).as_object().at("books").as_array().size(); };
  until("the link", [&] { return linked() == 2; }, [&] { act(ridge_, {"link", odile, old}); });
  until("parted", [&] { return linked() == 1; }, [&] { act(ridge_, {"unlink", old}); });
  if (history(ridge_).size() != 7) throw std::runtime_error("parting the books changed one");
  until("linked again", [&] { return linked() == 2; }, [&] { act(ridge_, {"link", odile, old}); });
  // One person with two spellings is one candidate; with a twin about, whoever has the name on the list for another name is asked about.
  const json::value arrival_now = ask(ridge_, {"arrival"});
  for (const json::value& entry : arrival_now.as_object().at("entries").as_array()) {
    if (text_at(entry, "given_name") != "Odile") continue;
    std::size_t odiles = 0;
    for (const json::value& candidate : entry.as_object().at("candidates").as_array())
      odiles += text_at(candidate, "book") == odile || text_at(candidate, "book") == old ? 1 : 0;
    if (odiles != 1) throw std::runtime_error("the linked books are " + std::to_string(odiles) + " candidates");
  }
  static_cast<void>(ask(ridge_, {"verify"}));
}

}  // namespace weavelog::testing
