#include "sync/exchange/content_exchange.h"

#include <algorithm>

namespace weavelog {
namespace {

constexpr std::size_t kMostWants = 4096;
constexpr std::size_t kMostShown = 64;
constexpr std::size_t kOffersPerMessage = 1000;
// How often the host is asked again while it asks others: at two ticks a second about twenty seconds.
constexpr int kPause = 2;
constexpr int kMostTries = 20;
// Ticks without an answer after which nobody else is kept from fetching the same: half a minute.
constexpr int kLong = 60;

}  // namespace

ContentExchange::ContentExchange(ContentRules rules, Talk talk) : rules_(std::move(rules)), talk_(std::move(talk)) {}

ContentExchange::~ContentExchange() { stop(); }

void ContentExchange::stop() {
  if (under_way_ && !under_way_->stale) rules_.files->let_go(under_way_->want.key.first, under_way_->want.key.second);
  under_way_.reset();
  wants_.clear();
  open_ = false;
}

tl::unexpected<Fault> ContentExchange::lie(const char* what) {
  auto fault = fail(FaultCode::malformed, what, "exchange", "end the exchange and try again");
  if (under_way_) {
    const Want want = under_way_->want;
    if (under_way_->from_start && !under_way_->stale) rules_.files->drop_fetched(want.key.first, want.key.second);
    ended(want, fault.value());
  }
  return fault;
}

void ContentExchange::open(bool spoken, bool takes, bool offers) {
  if (open_) return;
  open_ = true;
  const bool able = rules_.files != nullptr && rules_.names != nullptr;
  spoken_ = spoken && able;
  takes_ = spoken_ && takes;
  offers_ = spoken_ && offers;
  go();
}

bool ContentExchange::named(const Key& key) const { return rules_.names && rules_.names(key.first, key.second); }

ContentFetch* ContentExchange::shown(const Key& key) {
  const auto found = std::find_if(fetches_.begin(), fetches_.end(), [&](const ContentFetch& one) { return one.book == key.first && one.hash == key.second; });
  return found == fetches_.end() ? nullptr : &*found;
}

// ------------------------------------------------------------------------------------------------ wishes of ours

void ContentExchange::fetch(const BookId& book, const Digest& hash) {
  ContentFetch* line = shown({book, hash});
  if (line != nullptr && (line->state == FetchState::waiting || line->state == FetchState::coming)) return;
  if (line == nullptr) {
    if (fetches_.size() == kMostShown) {
      const auto over = std::find_if(fetches_.begin(), fetches_.end(), [](const ContentFetch& one) { return one.state >= FetchState::here; });
      fetches_.erase(over == fetches_.end() ? fetches_.begin() : over);
    }
    line = &fetches_.emplace_back();
  }
  *line = {book, hash, FetchState::waiting, 0, 0, std::nullopt};
  add({book, hash}, Why::person);
}

void ContentExchange::seek_here(const BookId& book, const Digest& hash) {
  if (takes_) add({book, hash}, Why::passed_on);
}

void ContentExchange::add(const Key& key, Why why) {
  const auto same = [&](const Want& one) { return one.key == key; };
  if (under_way_ && same(under_way_->want)) return;
  if (const auto found = std::find_if(wants_.begin(), wants_.end(), same); found != wants_.end()) {
    // Counted as offered it stays; but a person who wants it is not kept waiting.
    if (why == Why::person) found->pause = 0;
    return;
  }
  if (wants_.size() >= kMostWants) return;
  Want want;
  want.key = key;
  want.why = why;
  if (why == Why::offered) {
    ++offered_pending_;
    wants_.push_back(want);
  } else {
    wants_.push_front(want);  // somebody waits for it
  }
  go();
}

void ContentExchange::go() {
  if (!open_) return;
  for (std::size_t i = 0; !under_way_ && i < wants_.size();) {
    if (wants_[i].pause > 0) {
      ++i;
      continue;
    }
    Want want = wants_[i];
    const auto& [book, hash] = want.key;
    std::optional<Fault> fault;
    bool over = true;
    if (!spoken_) {
      fault = Fault{FaultCode::newer, "the other device runs an earlier version of Weavelog, which hands on no pictures", "exchange",
                    "update Weavelog on that device"};
    } else if (rules_.files->holds(book, hash)) {
      fault.reset();
    } else if (!named(want.key)) {
      fault = Fault{FaultCode::not_found, "no racket has this picture any more", to_hex(hash), "look at the racket again"};
    } else if (want.why != Why::person && !takes_) {
      fault = Fault{FaultCode::refused, "a device in the role of reader brings no pictures", "exchange", ""};
    } else {
      over = false;
    }
    if (over) {
      wants_.erase(wants_.begin() + static_cast<std::ptrdiff_t>(i));
      ended(want, std::move(fault));
      continue;
    }
    if (!rules_.files->claim(book, hash)) {  // another session fetches it
      wants_[i].pause = 1;
      ++i;
      continue;
    }
    wants_.erase(wants_.begin() + static_cast<std::ptrdiff_t>(i));
    ask(std::move(want));
  }
  settle();
}

/// Claimed.
void ContentExchange::ask(Want want) {
  const auto& [book, hash] = want.key;
  UnderWay next;
  next.asked = rules_.files->part_held(book, hash);
  next.from_start = next.asked == 0;
  if (under_way_) {
    next.size = under_way_->size;
    next.from_start = under_way_->from_start;
  }
  if (ContentFetch* line = shown(want.key)) {
    line->held = next.asked;
    line->size = next.size;
    if (next.asked > 0) line->state = FetchState::coming;
  }
  talk_.send(ContentWish{book, hash, next.asked});
  next.want = std::move(want);
  under_way_ = std::move(next);
}

/// What has come is of no use, whoever sent it: once more from the beginning.
void ContentExchange::begin_anew(Want want) {
  rules_.files->drop_fetched(want.key.first, want.key.second);
  want.again = true;
  under_way_.reset();
  ask(std::move(want));
}

void ContentExchange::ended(const Want& want, std::optional<Fault> fault) {
  if (under_way_ && under_way_->want.key == want.key) {
    if (!under_way_->stale) rules_.files->let_go(want.key.first, want.key.second);
    under_way_.reset();
  }
  if (want.why == Why::offered) {
    --offered_pending_;
    ++settled_;
  }
  if (ContentFetch* line = shown(want.key); line != nullptr && line->state <= FetchState::coming) {
    line->state = fault ? FetchState::failed : FetchState::here;
    line->fault = std::move(fault);
    if (!line->fault) line->held = line->size;
  }
}

Outcome<> ContentExchange::take(const ContentPart& part) {
  const Key key{part.book, part.hash};
  if (!under_way_ || under_way_->want.key != key) return lie("a picture came that nobody asked for");
  if (came_late()) return {};
  UnderWay& now = *under_way_;
  const std::uint64_t left = part.size - std::min(part.size, part.offset);
  if (part.offset != now.asked || part.size == 0 || part.size > rules_.files->bounds().one || (now.size != 0 && part.size != now.size) ||
      part.bytes.size() != std::min<std::uint64_t>(left, kContentPartBytes))
    return lie("this is not the part of the picture that was asked for");
  Want want = now.want;
  // Forgotten while it was under way: not even the part stays.
  if (!named(key)) {
    rules_.files->drop_fetched(part.book, part.hash);
    ended(want, Fault{FaultCode::not_found, "no racket has this picture any more", to_hex(part.hash), "look at the racket again"});
    go();
    return {};
  }
  if (left == 0) {  // what was held before is longer than all of it
    if (now.from_start || want.again) return lie("a picture that ends before it is whole");
    begin_anew(std::move(want));
    return {};
  }
  now.size = part.size;
  if (rules_.files->part_held(part.book, part.hash) != part.offset) {  // it had to make room for others
    now.from_start = false;
    if (++want.tries <= kMostTries) {
      ask(std::move(want));
    } else {
      ended(want, Fault{FaultCode::no_space, "the pictures of this device have reached their bound", to_hex(part.hash),
                        "forget players who are done with, or hand the pictures on"});
      go();
    }
    return {};
  }
  const auto whole = rules_.files->add_part(part.book, part.hash, part.size, part.offset, part.bytes);
  if (!whole) {
    if (whole.error().code != FaultCode::malformed) {
      ended(want, whole.error());
    } else if (now.from_start || want.again) {
      const Fault fault = whole.error();
      ended(want, fault);
      return fail(fault);
    } else {
      // Some of it came from somebody else at another time: this peer need not be the one who lied.
      begin_anew(std::move(want));
      return {};
    }
  } else if (*whole) {
    ++received_;
    ended(want, {});
  } else {
    ask(std::move(want));
    return {};
  }
  // An order to forget may have come while it was written, on another thread.
  if (!named(key)) rules_.files->drop_fetched(part.book, part.hash);
  go();
  return {};
}

Outcome<> ContentExchange::take(const ContentAbsent& absent) {
  const Key key{absent.book, absent.hash};
  if (!under_way_ || under_way_->want.key != key) return lie("an answer about a picture that nobody asked for");
  if (came_late()) return {};
  Want want = under_way_->want;
  if (absent.why == static_cast<std::uint64_t>(WhyAbsent::sought) && want.why == Why::person && want.tries < kMostTries) {
    rules_.files->let_go(absent.book, absent.hash);
    under_way_.reset();
    want.pause = kPause;
    ++want.tries;
    wants_.push_back(std::move(want));
  } else if (absent.why <= static_cast<std::uint64_t>(WhyAbsent::sought)) {
    ended(want, Fault{FaultCode::not_found, "no device that is connected has this picture", to_hex(absent.hash),
                      "try again when the tablet on which it was taken is here"});
  } else {
    ended(want, Fault{FaultCode::refused, "the other device may not hand this picture on", to_hex(absent.hash),
                      "look whether the player agreed to sharing"});
  }
  go();
  return {};
}

bool ContentExchange::came_late() {
  if (!under_way_->stale) return false;
  wants_.push_front(std::move(under_way_->want));
  under_way_.reset();
  go();
  return true;
}

void ContentExchange::tick() {
  if (under_way_ && !under_way_->stale && ++under_way_->waited > kLong) {
    under_way_->stale = true;
    rules_.files->let_go(under_way_->want.key.first, under_way_->want.key.second);
  }
  for (Want& want : wants_)
    if (want.pause > 0) --want.pause;
  go();
}

// ------------------------------------------------------------------------------------------------ wishes of the peer

Outcome<> ContentExchange::take(const ContentWish& wish) {
  const Key key{wish.book, wish.hash};
  const auto absent = [&](WhyAbsent why) { talk_.send(ContentAbsent{wish.book, wish.hash, static_cast<std::uint64_t>(why)}); };
  // The same answer whether there is no such book, or it may not go there, or has no such picture: none of it is anybody's business.
  if (!spoken_ || !talk_.may_send(wish.book) || !named(key)) {
    absent(WhyAbsent::refused);
    return {};
  }
  // Read whole and checked before the first part, so that nobody is given damaged bytes; the rest is then taken from the file.
  if (proved_ != key) {
    proved_.reset();
    if (!rules_.files->read(wish.book, wish.hash)) {
      absent(rules_.seek && rules_.seek(wish.book, wish.hash) ? WhyAbsent::sought : WhyAbsent::not_here);
      return {};
    }
    proved_ = key;
  }
  auto piece = rules_.files->read_piece(wish.book, wish.hash, wish.offset, kContentPartBytes);
  if (!piece) {
    proved_.reset();
    absent(WhyAbsent::not_here);
    return {};
  }
  if (wish.offset < piece->size && wish.offset + piece->bytes.size() == piece->size) ++sent_;
  talk_.send(ContentPart{wish.book, wish.hash, piece->size, wish.offset, std::move(piece->bytes)});
  return {};
}

// ------------------------------------------------------------------------------------------------ offers

void ContentExchange::offer(std::int64_t revision) {
  if (!open_) return;
  told_ = true;
  if (!offers_) return;
  const std::uint64_t made = rules_.files->made_count();
  // What no entry named yet, or was not for this host, may be by now.
  if (revision_seen_ >= 0 && made == made_seen_ && (!unnamed_ || revision == revision_seen_)) return;
  made_seen_ = made;
  revision_seen_ = revision;
  unnamed_ = false;
  ContentOffer message;
  for (const HeldContent& one : rules_.files->made()) {
    const Key key{one.book, one.hash};
    if (offered_.contains(key)) continue;
    if (!talk_.may_send(one.book) || !named(key)) {
      unnamed_ = true;
      continue;
    }
    offered_.insert(key);
    message.contents.push_back({one.book, one.hash, one.size});
    if (message.contents.size() < kOffersPerMessage) continue;
    talk_.send(message);
    message.contents.clear();
  }
  if (!message.contents.empty()) talk_.send(message);
}

Outcome<> ContentExchange::take(const ContentOffer& offer) {
  if (!takes_ && spoken_)
    return fail(FaultCode::refused, "a device in the role of reader sends pictures", "exchange", "ask the head of the room for another role");
  if (offer.contents.size() > kOffersPerMessage) return lie("more pictures in one message than are allowed");
  for (const OfferedContent& one : offer.contents) {
    const Key key{one.book, one.hash};
    const bool wanted = spoken_ && one.size > 0 && one.size <= rules_.files->bounds().one && wants_.size() < kMostWants &&
                        !rules_.files->holds(one.book, one.hash) && named(key) && rules_.files->has_room(one.size);
    const std::uint64_t before = offered_pending_ + settled_;
    if (wanted) add(key, Why::offered);
    if (offered_pending_ + settled_ == before) ++settled_;  // not wanted, or on its way already
  }
  settle();
  return {};
}

void ContentExchange::settle() {
  if (offered_pending_ > 0 || settled_ == settled_said_) return;
  settled_said_ = settled_;
  talk_.send(ContentSettled{settled_});
}

Outcome<> ContentExchange::take(const ContentSettled& settled) {
  if (settled.count > offered_.size()) return lie("an answer to a picture that was never offered");
  settled_there_ = settled.count;
  return {};
}

std::optional<std::uint64_t> ContentExchange::unsettled() const {
  if (!told_) return std::nullopt;
  return offered_.size() - std::min<std::uint64_t>(offered_.size(), settled_there_);
}

}  // namespace weavelog
