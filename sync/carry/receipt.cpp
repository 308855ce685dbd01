#include "sync/carry/receipt.h"

#include <algorithm>
#include <boost/json.hpp>
#include <limits>
#include <optional>

#include "core/log/archive.h"
#include "sync/carry/carried_file.h"
#include "sync/carry/sealed_box.h"

namespace weavelog {
namespace {

namespace json = boost::json;

constexpr std::string_view kReceiptMagic = "weavelog receipt";
constexpr std::uint8_t kFormat = 1;
constexpr std::size_t kPlainReceipt = 16 + 2 + 16;  ///< magic, format, oldest reader, bundle
constexpr const char* kIndex = "carry.bundles";

std::string key_of(const BundleId& bundle) { return "carry.receipt " + bundle.hex(); }

Bytes signed_words(const BundleId& bundle, const PublicKey& maker, ByteView body) {
  Bytes out;
  OutArchive ar(out);
  ar.raw(as_bytes("weavelog receipt 1"));
  ar.raw(bundle.bytes);
  ar.raw(maker);
  ar.raw(body);
  return out;
}

Bytes body_of(const Receipt& receipt) {
  Bytes out;
  OutArchive ar(out);
  ar(receipt.by.key, receipt.by.incarnation, receipt.by.device, receipt.at, receipt.complete);
  ar.varint(receipt.books.size());
  for (const BookHeads& book : receipt.books) {
    ar(book.book);
    ar.byte(static_cast<std::uint8_t>(book.kind));
    ar.varint(book.heads.size());
    for (const Head& head : book.heads) ar(head.author, head.seq, head.hash);
  }
  return out;
}

Receipt load_body(ByteView body) {
  InArchive ar(body);
  Receipt out;
  ar(out.by.key, out.by.incarnation, out.by.device, out.at, out.complete);
  for (std::size_t books = ar.count(18, kMaxReceiptBytes); books > 0; --books) {
    BookHeads& book = out.books.emplace_back();
    ar(book.book);
    book.kind = static_cast<BookKind>(ar.byte());
    for (std::size_t heads = ar.count(49, kMaxReceiptBytes); heads > 0; --heads) {
      Head& head = book.heads.emplace_back();
      ar(head.author, head.seq, head.hash);
    }
  }
  ar.expect_end();
  return out;
}

json::array remembered_list(const Ledger& ledger, const std::string& key) {
  const auto kept = ledger.remembered(key);
  if (!kept) return {};
  boost::system::error_code error;
  json::value parsed = json::parse(as_text(*kept), error);
  return !error && parsed.is_array() ? std::move(parsed.get_array()) : json::array{};
}

std::string text_in(const json::object& object, std::string_view name) {
  const json::value* held = object.if_contains(name);
  return held != nullptr && held->is_string() ? std::string(held->get_string()) : std::string();
}

std::int64_t number_in(const json::object& object, std::string_view name) {
  const json::value* held = object.if_contains(name);
  if (held == nullptr || !held->is_int64()) return 0;
  return held->get_int64();
}

std::uint64_t entries_of(const BookHeads& book) {
  std::uint64_t out = 0;
  for (const Head& head : book.heads) out += head.seq;
  return out;
}

}  // namespace

Receipt receipt_of(const Ledger& ledger, const TakenBundle& taken) {
  Receipt out;
  out.bundle = taken.id;
  out.by = ledger.self();
  out.at = ledger.wall().now();
  // What was left out here for reasons of its own is not all there either.
  out.complete = taken.complete() && taken.withheld.empty() && taken.forgotten.empty() && taken.not_begun.empty();
  for (const BookId& id : taken.books) {
    const auto book = ledger.book(id);
    if (book) out.books.push_back({id, book->kind, ledger.heads(id)});
  }
  return out;
}

Outcome<Bytes> seal_receipt(const Receipt& receipt, const DeviceKey& key, const PublicKey& maker) {
  Bytes body = body_of(receipt);
  const Signature signature = key.sign(signed_words(receipt.bundle, maker, body));
  body.insert(body.end(), signature.begin(), signature.end());
  const auto box = seal_for(maker, body);
  if (!box) return fail(FaultCode::bad_input, "the bundle's maker has no device's key", "receipt", "");
  Bytes out;
  OutArchive ar(out);
  ar.raw(as_bytes(kReceiptMagic));
  ar.byte(kFormat);
  ar.byte(kFormat);
  ar.raw(receipt.bundle.bytes);
  ar.raw(*box);
  return out;
}

Outcome<BundleId> bundle_of_receipt(ByteView file) {
  if (file.size() < kReceiptMagic.size() || as_text(file.first(kReceiptMagic.size())) != kReceiptMagic)
    return fail(FaultCode::malformed, "this is not a receipt", "receipt", "choose a file that `bundle read --receipt` wrote");
  if (file.size() < kPlainReceipt) return fail(FaultCode::malformed, "it ends early", "receipt", "copy it again from where it was made");
  if (file[kReceiptMagic.size() + 1] > kFormat)
    return fail(FaultCode::newer, "a receipt of format " + std::to_string(file[kReceiptMagic.size()]), "receipt", "update Weavelog on this device");
  return *BundleId::from_bytes(file.subspan(kReceiptMagic.size() + 2, 16));
}

Outcome<Receipt> open_receipt(ByteView file, const DeviceKey& maker) {
  const auto bundle = bundle_of_receipt(file);
  if (!bundle) return fail(bundle.error());
  if (file.size() > kMaxReceiptBytes) return fail(FaultCode::malformed, "far too large", "receipt", "");
  const auto plain = open_sealed(maker, file.subspan(kPlainReceipt));
  if (!plain)
    return fail(FaultCode::untrusted, "it is for another device, or damaged", "receipt",
                "read it on the device that made the bundle, or copy it again");
  Signature signature;
  if (plain->size() < signature.size()) return fail(FaultCode::malformed, "it ends early", "receipt", "");
  const ByteView body = ByteView(*plain).first(plain->size() - signature.size());
  std::copy(plain->end() - static_cast<std::ptrdiff_t>(signature.size()), plain->end(), signature.begin());
  try {
    Receipt out = load_body(body);
    out.bundle = *bundle;
    if (!verify(out.by.key, signed_words(*bundle, maker.public_key(), body), signature))
      return fail(FaultCode::untrusted, "it is not signed by the device that it names", "receipt", "ask for another one");
    return out;
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, error.what(), "receipt", "ask for another one");
  }
}

std::vector<ReceiptLine> compare_receipt(const Ledger& ledger, const Receipt& receipt) {
  std::vector<ReceiptLine> out;
  for (const BookHeads& theirs : receipt.books) {
    ReceiptLine& line = out.emplace_back();
    line.book = theirs.book;
    line.held = ledger.book(theirs.book).has_value();
    if (!line.held) continue;
    line.parted = ledger.forked(theirs.book, theirs.heads).size();
    for (const Head& ours : ledger.heads(theirs.book)) {
      const auto there =
          std::find_if(theirs.heads.begin(), theirs.heads.end(), [&](const Head& head) { return head.author == ours.author; });
      const std::uint64_t seq = there == theirs.heads.end() ? 0 : there->seq;
      if (seq < ours.seq) line.lacking += ours.seq - seq;
    }
  }
  return out;
}

// ------------------------------------------------------------------------------------------------ what the maker remembers

Outcome<> remember_bundle(Ledger& ledger, const MadeBundle& made, const std::string& receiver) {
  json::array list = remembered_list(ledger, kIndex);
  // Once, also where it was remembered before a cut.
  list.erase(std::remove_if(list.begin(), list.end(), [&](const json::value& one) { return one.is_object() && text_in(one.get_object(), "id") == made.id.hex(); }),
             list.end());
  if (list.size() >= kBundlesRemembered) {
    // The oldest goes, with what is known of it.
    if (list.front().is_object())
      if (const auto old = BundleId::from_hex(text_in(list.front().get_object(), "id")))
        if (auto kept = ledger.remember(key_of(*old), as_bytes("[]")); !kept) return kept;
    list.erase(list.begin());
  }
  list.push_back(json::object{{"id", made.id.hex()},
                              {"for", made.for_device ? to_hex(*made.for_device) : std::string()},
                              {"made", made.manifest.made},
                              {"receiver", receiver},
                              {"note", made.manifest.note},
                              {"books", static_cast<std::int64_t>(made.books)},
                              {"entries", static_cast<std::int64_t>(made.entries)}});
  return ledger.remember(kIndex, as_bytes(json::serialize(list)));
}

Outcome<> note_bundle(PeerStore& peers, const BundleWish& wish, const MadeBundle& made, const std::string& receiver) {
  const std::set<BookId> left(made.left_out.begin(), made.left_out.end());
  std::set<BookId> books(wish.books.begin(), wish.books.end());
  std::erase_if(books, [&](const BookId& book) { return left.contains(book); });
  const std::vector<BookId> all(books.begin(), books.end());
  return peers.note_handed(wish.backup ? HandedAs::backup : HandedAs::bundle, receiver, all, made.manifest.made);
}

Outcome<> remember_receipt(Ledger& ledger, const DeviceList& devices, const Receipt& receipt) {
  if (known_as(ledger, devices, receipt.by.key) == KnownAs::revoked)
    return fail(FaultCode::refused, "\"" + device_name(ledger, devices, receipt.by.key) + "\", which signed it, was revoked here", "receipt",
                "ask somebody else of the room who has the bundle");
  const json::array list = remembered_list(ledger, kIndex);
  const auto about = std::find_if(list.begin(), list.end(), [&](const json::value& one) {
    return one.is_object() && text_in(one.get_object(), "id") == receipt.bundle.hex();
  });
  if (about == list.end())
    return fail(FaultCode::not_found, "this device does not remember having made that bundle", "receipt", "read it on the device that made it");
  json::array kept = remembered_list(ledger, key_of(receipt.bundle));
  const std::string by = to_hex(receipt.by.key);
  if (const std::string only = text_in(about->get_object(), "for"); !only.empty() && only != by)
    return fail(FaultCode::untrusted, "it is signed by \"" + device_name(ledger, devices, receipt.by.key) + "\", which can't open that bundle: it was made for another device",
                "receipt", "ask that device for one");
  const auto theirs = [&](const json::value& one) { return one.is_object() && text_in(one.get_object(), "by") == by; };
  // One that says less and is no newer was overtaken. Its device's clock may have been put back: then what it holds tells.
  std::uint64_t entries = 0;
  for (const BookHeads& book : receipt.books) entries += entries_of(book);
  std::optional<std::int64_t> known_at;
  std::uint64_t known_entries = 0;
  for (const json::value& one : kept) {
    if (!theirs(one)) continue;
    const json::object& line = one.get_object();
    if (line.contains("book")) {
      known_entries += static_cast<std::uint64_t>(number_in(line, "entries"));
    } else {
      known_at = number_in(line, "at");
    }
  }
  if (known_at && receipt.at < *known_at && entries <= known_entries)
    return fail(FaultCode::conflict, "a newer receipt of that device was read before", "receipt", "nothing is to be done; the newer one stands");
  kept.erase(std::remove_if(kept.begin(), kept.end(), theirs), kept.end());
  kept.push_back(json::object{{"by", by}, {"device", receipt.by.device}, {"at", receipt.at}, {"complete", receipt.complete}});
  // An element a book, so that forgetting one takes just that.
  for (const BookHeads& book : receipt.books)
    kept.push_back(json::object{{"by", by}, {"book", book.book.hex()}, {"entries", static_cast<std::int64_t>(entries_of(book))}});
  return ledger.remember(key_of(receipt.bundle), as_bytes(json::serialize(kept)));
}

std::vector<HandedOver> bundles_made(const Ledger& ledger, const DeviceList& devices) {
  std::vector<HandedOver> out;
  for (const json::value& one : remembered_list(ledger, kIndex)) {
    if (!one.is_object()) continue;
    const json::object& held = one.get_object();
    const auto id = BundleId::from_hex(text_in(held, "id"));
    if (!id) continue;
    HandedOver& made = out.emplace_back();
    made.id = *id;
    made.made = number_in(held, "made");
    made.receiver = text_in(held, "receiver");
    made.note = text_in(held, "note");
    made.books = static_cast<std::uint64_t>(number_in(held, "books"));
    made.entries = static_cast<std::uint64_t>(number_in(held, "entries"));
    for (const json::value& receipt : remembered_list(ledger, key_of(*id))) {
      if (!receipt.is_object()) continue;
      const json::object& line = receipt.get_object();
      HandedOver::Taken taken;
      if (!from_hex(text_in(line, "by"), taken.by)) continue;
      if (!line.contains("book")) {
        taken.known = known_as(ledger, devices, taken.by);
        taken.device = taken.known == KnownAs::stranger ? text_in(line, "device") : device_name(ledger, devices, taken.by);
        taken.at = number_in(line, "at");
        const json::value* complete = line.if_contains("complete");
        taken.complete = complete != nullptr && complete->is_bool() && complete->get_bool();
        made.taken.push_back(std::move(taken));
      } else {
        for (HandedOver::Taken& known : made.taken)
          if (known.by == taken.by) ++known.books;
      }
    }
  }
  std::reverse(out.begin(), out.end());
  return out;
}

bool free_for_receipt(const std::filesystem::path& file, const BundleId& bundle) {
  std::error_code error;
  if (std::filesystem::symlink_status(file, error).type() == std::filesystem::file_type::not_found) return true;
  const auto held = read_small_file(file, kMaxReceiptBytes);
  if (!held) return false;
  const auto about = bundle_of_receipt(*held);
  return about && *about == bundle;
}

std::filesystem::path place_for_receipt(const std::filesystem::path& folder, const std::string& name, const BundleId& bundle) {
  std::filesystem::path out = folder / (name + ".receipt");
  for (int number = 2; !free_for_receipt(out, bundle); ++number) out = folder / (name + "-" + std::to_string(number) + ".receipt");
  return out;
}

}  // namespace weavelog
