#pragma once

#include <QString>
#include <QVariant>

#include <optional>
#include <vector>

#include "core/base/language.h"
#include "core/base/outcome.h"
#include "core/people/consent.h"
#include "sync/carry/known_as.h"
#include "sync/carry/passphrase.h"

// What is said of bundles on the screens.

// What went wrong and what to do about it: {title, text, detail}; empty for no fault. `detail`: where it lies, or the program's own words where
// only those tell. `bringing`: a file is read, not written.
[[nodiscard]] QVariantMap carryTrouble(const std::optional<weavelog::Fault>& fault, bool bringing);
// The same of a receipt that was read and does not count: only the program's own words tell why.
[[nodiscard]] QVariantMap receiptTrouble(const weavelog::Fault& fault);
// Why a book may not go; "" if it may.
[[nodiscard]] QString crossingText(weavelog::Crossing crossing);
// What a device is to this one: "paired event server".
[[nodiscard]] QString standingText(weavelog::KnownAs known);
/// Who took a bundle in, by a receipt: anybody can sign one under any name, so that who is not known here is told so.
[[nodiscard]] QString takerText(const std::string& device, weavelog::KnownAs known);
[[nodiscard]] QString strengthText(weavelog::PassphraseStrength strength);
// "2.3 MB" in the language.
[[nodiscard]] QString bytesText(const weavelog::Language& language, std::uint64_t bytes);
// The names of players, the first few of many: "Okafor Ada, Kova Mira and 4 more".
[[nodiscard]] QString namesInShort(const weavelog::Ledger& ledger, const std::vector<weavelog::BookId>& books);
// The name as lists have it, the native one where there is no other; "" for none.
[[nodiscard]] QString listedName(const std::string& family, const std::string& given, const std::string& native);
