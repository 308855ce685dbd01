#pragma once
// Receipt: what a device that took a bundle in holds of its books since, signed by it and sealed to the bundle's maker, who then knows
// that the colleague has it. A small file; sealed, because it names books, and digests of what is in them.

#include <filesystem>
#include <string>
#include <vector>

#include "core/store/ledger.h"
#include "sync/carry/bundle.h"
#include "sync/carry/known_as.h"

namespace weavelog {

struct Receipt {
  BundleId bundle;
  AuthorCard by;          ///< who took it in
  UnixMs at = 0;          ///< by its clock
  bool complete = false;  ///< nothing of the bundle was put aside, left out or missing
  std::vector<BookHeads> books;  ///< as held there when it was written; books that were left out are not among them
  bool operator==(const Receipt&) const = default;
};

/// Of more than so many bytes none is read.
inline constexpr std::size_t kMaxReceiptBytes = 32 * 1024 * 1024;

/// Reads the ledger as it is now. May throw SQLite's exception.
[[nodiscard]] Receipt receipt_of(const Ledger& ledger, const TakenBundle& taken);
/// The file. Faults: bad_input (the maker's key is none).
[[nodiscard]] Outcome<Bytes> seal_receipt(const Receipt& receipt, const DeviceKey& key, const PublicKey& maker);
/// Which bundle it is about, without opening it. Faults: malformed, newer.
[[nodiscard]] Outcome<BundleId> bundle_of_receipt(ByteView file);
/// Faults: malformed (no receipt, cut short, altered), newer, untrusted (for another device; not signed by who it names).
[[nodiscard]] Outcome<Receipt> open_receipt(ByteView file, const DeviceKey& maker);

/// What a receipt says of one book, compared with what is held here now.
struct ReceiptLine {
  BookId book;
  bool held = false;           ///< here; otherwise nothing can be compared
  std::uint64_t lacking = 0;   ///< entries of ours that were not there
  std::uint64_t parted = 0;    ///< authors of whom there was another branch there
};
[[nodiscard]] std::vector<ReceiptLine> compare_receipt(const Ledger& ledger, const Receipt& receipt);

// --- what the maker remembers, in its ledger's file; books that are forgotten are erased from it with the rest

/// A bundle that was made here, and who is known to have taken it in.
struct HandedOver {
  BundleId id;
  UnixMs made = 0;
  std::string receiver;  ///< for people
  std::string note;
  std::uint64_t books = 0, entries = 0;
  struct Taken {
    PublicKey by{};
    std::string device;  ///< what this device calls it; of one that nothing is known of here, what it calls itself
    KnownAs known = KnownAs::stranger;
    UnixMs at = 0;
    bool complete = false;
    std::uint64_t books = 0;
  };
  std::vector<Taken> taken;
};
inline constexpr std::size_t kBundlesRemembered = 500;

[[nodiscard]] Outcome<> remember_bundle(Ledger& ledger, const MadeBundle& made, const std::string& receiver);
/// Notes with every book about a person that it was put into that bundle (PeerStore::handed). Faults: those of Ledger::transact.
[[nodiscard]] Outcome<> note_bundle(PeerStore& peers, const BundleWish& wish, const MadeBundle& made, const std::string& receiver);
/// Faults: not_found (this device does not remember having made that bundle), refused (who signed it was revoked), untrusted (the bundle was sealed to
/// another device than who signed it), conflict (a newer one of that device was
/// read before), those of Ledger::remember.
[[nodiscard]] Outcome<> remember_receipt(Ledger& ledger, const DeviceList& devices, const Receipt& receipt);
/// Newest first.
[[nodiscard]] std::vector<HandedOver> bundles_made(const Ledger& ledger, const DeviceList& devices);

// --- where the file goes

/// Nothing is lost by writing the bundle's receipt there: there is no such file, or one of the same bundle.
[[nodiscard]] bool free_for_receipt(const std::filesystem::path& file, const BundleId& bundle);
/// A name in the folder, NAME.receipt if that is free for it.
[[nodiscard]] std::filesystem::path place_for_receipt(const std::filesystem::path& folder, const std::string& name, const BundleId& bundle);

}  // namespace weavelog
