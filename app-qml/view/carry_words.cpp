#include "app-qml/view/carry_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

#include "app-qml/view/model_text.h"
#include "core/model/queries.h"

namespace {

// The context under which translators find all of these.
struct CarryWords {
  Q_DECLARE_TR_FUNCTIONS(CarryWords)
};

}  // namespace

QVariantMap carryTrouble(const std::optional<weavelog::Fault>& fault, bool bringing) {
  if (!fault) return {};
  using weavelog::FaultCode;
  QString title = bringing ? CarryWords::tr("The file could not be brought in") : CarryWords::tr("The file could not be written");
  QString text = CarryWords::tr("Try again; if it stays, show the line below to whoever looks after the tablets.");
  switch (fault->code) {
    case FaultCode::newer:
      title = CarryWords::tr("It was made by a newer Weavelog");
      text = CarryWords::tr("Update Weavelog on this tablet, then bring the file in again. Nothing was taken.");
      break;
    case FaultCode::no_space:
      title = CarryWords::tr("There is no room left");
      text = CarryWords::tr("Make room on the stick or on this tablet, then go on. What is there already stays.");
      break;
    case FaultCode::not_found:
      title = CarryWords::tr("The folder or stick is not there");
      text = CarryWords::tr("Put the stick in again and go on, or choose another place. Nothing is lost.");
      break;
    case FaultCode::conflict:
      title = CarryWords::tr("There is a file of that name already");
      text = CarryWords::tr("Choose another place; the file that is there stays as it is.");
      break;
    case FaultCode::untrusted:
      title = CarryWords::tr("It does not open here");
      text = CarryWords::tr("It is for another tablet, the passphrase is another one, or somebody altered it. Nothing was taken.");
      break;
    case FaultCode::refused:
      title = bringing ? CarryWords::tr("It may not be taken in here") : CarryWords::tr("It was not written");
      text = bringing ? CarryWords::tr("The line below says why and what to do. Nothing was taken.")
                      : CarryWords::tr("The line below says why and what to do.");
      break;
    case FaultCode::malformed:
      title = CarryWords::tr("The file is damaged, or is no bundle");
      text = CarryWords::tr("Have it copied again from where it was made. What could be read is kept.");
      break;
    case FaultCode::io:
      title = bringing ? CarryWords::tr("The file can't be read to its end") : CarryWords::tr("The stick or disk does not take the file");
      text = CarryWords::tr("Look at the stick, put it in again and go on. Nothing is lost.");
      break;
    case FaultCode::bad_input:
      title = CarryWords::tr("Something is missing or wrong");
      text = CarryWords::tr("The line below says what.");
      break;
    default:
      break;
  }
  // What is said above needs no second telling in the program's own words; where it lies is worth to know.
  const bool lineBelow = fault->code == FaultCode::refused || fault->code == FaultCode::bad_input || fault->code == FaultCode::expired ||
                         fault->code == FaultCode::damaged || fault->code == FaultCode::locked || fault->code == FaultCode::clock;
  const bool place = !lineBelow && fault->code != FaultCode::malformed && fault->code != FaultCode::untrusted && fault->code != FaultCode::newer;
  const QString detail = lineBelow ? qtext(fault->message()) : place ? qtext(fault->where) : QString();
  return {{QStringLiteral("title"), title}, {QStringLiteral("text"), text}, {QStringLiteral("detail"), detail}};
}

QVariantMap receiptTrouble(const weavelog::Fault& fault) {
  return {{QStringLiteral("title"), CarryWords::tr("This receipt does not count")},
          {QStringLiteral("text"), CarryWords::tr("The line below says why. What is known of the bundle stays as it was.")},
          {QStringLiteral("detail"), qtext(fault.message())}};
}

QString crossingText(weavelog::Crossing crossing) {
  switch (crossing) {
    case weavelog::Crossing::may: return {};
    case weavelog::Crossing::private_kit: return CarryWords::tr("private, never goes to others");
    case weavelog::Crossing::withdrew: return CarryWords::tr("withdrew the consent");
    case weavelog::Crossing::other_room: return CarryWords::tr("agreed to one room only");
    case weavelog::Crossing::not_entered: return CarryWords::tr("not known to be at that event");
  }
  return {};
}

QString standingText(weavelog::KnownAs known) {
  switch (known) {
    case weavelog::KnownAs::self: return CarryWords::tr("this tablet");
    case weavelog::KnownAs::host: return CarryWords::tr("paired with this tablet");
    case weavelog::KnownAs::member: return CarryWords::tr("on this tablet's list");
    case weavelog::KnownAs::author: return CarryWords::tr("known by what it wrote");
    case weavelog::KnownAs::stranger: return CarryWords::tr("not known here");
    case weavelog::KnownAs::revoked: return CarryWords::tr("taken off the list");
  }
  return {};
}

QString takerText(const std::string& device, weavelog::KnownAs known) {
  const bool doubtful = known == weavelog::KnownAs::stranger || known == weavelog::KnownAs::revoked;
  return doubtful ? QStringLiteral("%1 (%2)").arg(qtext(device), standingText(known)) : qtext(device);
}

QString strengthText(weavelog::PassphraseStrength strength) {
  switch (strength) {
    case weavelog::PassphraseStrength::too_short: return CarryWords::tr("Too short: at least eight characters, better four or five words.");
    case weavelog::PassphraseStrength::weak: return CarryWords::tr("Easy to guess: a stranger with the file opens it. Take more words.");
    case weavelog::PassphraseStrength::fair: return CarryWords::tr("Good enough against whoever finds the stick.");
    case weavelog::PassphraseStrength::strong: return CarryWords::tr("Hard to guess, also for somebody who tries for years.");
  }
  return {};
}

QString bytesText(const weavelog::Language& language, std::uint64_t bytes) {
  // Nobody needs to know single bytes.
  const auto shown = static_cast<qint64>(std::max<std::uint64_t>(bytes, 1000));
  return QLocale(qtext(language.tag())).formattedDataSize(shown, shown < 1'000'000 ? 0 : 1, QLocale::DataSizeSIFormat);
}

QString namesInShort(const weavelog::Ledger& ledger, const std::vector<weavelog::BookId>& books) {
  constexpr std::size_t shown = 6;
  QStringList names;
  for (const auto& book : books) {
    if (static_cast<std::size_t>(names.size()) == shown) break;
    if (const auto player = weavelog::find_player(ledger, book)) names.append(listedName(player->family_name, player->given_name, player->native_name));
  }
  const auto more = static_cast<int>(books.size()) - static_cast<int>(names.size());
  const QString list = names.join(QStringLiteral(", "));
  return more <= 0 ? list : list + u' ' + CarryWords::tr("and %n more", "", more);
}

QString listedName(const std::string& family, const std::string& given, const std::string& native) {
  const QString name = qtext(family + " " + given).simplified();
  return name.isEmpty() ? qtext(native) : name;
}
