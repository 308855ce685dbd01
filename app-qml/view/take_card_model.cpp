#include "app-qml/view/take_card_model.h"

#include <QQmlEngine>

#include "app-qml/papers/paper_words.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/card_words.h"
#include "app-qml/view/code_reader.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/desk/consent.h"
#include "core/desk/phrases.h"
#include "core/model/queries.h"
#include "core/people/consent.h"
#include "sync/trust/proquint.h"

namespace {

using weavelog::FaultCode;

// The two lists of how a device is known say the same.
static_assert(static_cast<int>(TakeCardModel::ShutOut) == static_cast<int>(weavelog::KnownAs::revoked));
static_assert(static_cast<int>(TakeCardModel::Stranger) == static_cast<int>(weavelog::KnownAs::stranger));

}  // namespace

TakeCardModel::TakeCardModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  // What the exchange brought meanwhile may be newer than the card.
  connect(&work_, &Work::changed, this, [this] {
    if (state_ == Read) weigh();
  });
}

TakeCardModel* TakeCardModel::create(QQmlEngine* engine, QJSEngine*) {
  return new TakeCardModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void TakeCardModel::end(State state, const QString& fault) {
  state_ = state;
  fault_ = fault;
  emit changed();
}

void TakeCardModel::leave() {
  wanted_ = false;
  card_.reset();
  findings_ = {};
  end(Waiting);
}

void TakeCardModel::ask() {
  leave();
  wanted_ = true;
  emit changed();
  emit asked();
}

void TakeCardModel::take(const QString& text) {
  wanted_ = true;
  read(text);
  emit asked();
}

void TakeCardModel::takePicture(const QUrl& file) {
  card_.reset();
  findings_ = {};
  beside_.work([path = file.isLocalFile() ? file.toLocalFile() : file.toString()] { return codesOnFile(path); },
               [this](const weavelog::Outcome<QStringList>& codes) {
                 if (!codes) return end(NoFile, qtext(codes.error().message()));
                 if (codes->isEmpty()) return end(NoCode);
                 // Of several codes on one picture the card is meant.
                 for (const QString& code : *codes)
                   if (weavelog::looks_like_card(code.toStdString())) return read(code);
                 end(NoCard);
               });
  emit changed();
}

void TakeCardModel::read(const QString& text) {
  card_.reset();
  findings_ = {};
  // A mail or a form may have broken the lines; the card's own letters have no line ends.
  QString whole = text.trimmed();
  whole.remove(u'\n').remove(u'\r');
  auto card = weavelog::read_card(whole.toStdString());
  if (card) {
    card_ = std::move(*card);
    return weigh();
  }
  switch (card.error().code) {
    case FaultCode::bad_input:
      return end(NoCard);
    case FaultCode::untrusted:
      return end(Forged);
    case FaultCode::newer:
      return end(FromNewer, qtext(card.error().message()));
    default:
      return end(Damaged, qtext(card.error().message()));
  }
}

void TakeCardModel::weigh() {
  const auto& ledger = work_.ledger();
  const auto& devices = work_.workplace().station().devices();
  findings_ = {};
  findings_.signer = weavelog::known_as(ledger, devices, card_->key);
  auto findings = weavelog::weigh_card(ledger, devices, *card_);
  if (findings) {
    findings_ = std::move(*findings);
    return end(Read);
  }
  findings_.held = ledger.book(card_->book).has_value();
  if (ledger.is_forgotten(card_->book)) return end(Forgotten);
  if (findings_.held && !weavelog::may_cross(ledger, card_->book, weavelog::kPlayerBook)) return end(NoConsent);
  if (findings_.signer == weavelog::KnownAs::revoked) return end(Revoked);
  end(Refused, qtext(findings.error().message()));
}

bool TakeCardModel::store(bool acceptNewer) {
  if (!card_ || state_ != Read) return false;
  const auto draft = weavelog::take_card(work_.ledger(), work_.workplace().station().devices(), *card_, acceptNewer);
  if (draft && draft->empty()) {
    end(NothingNew);
    return true;
  }
  const State before = std::exchange(state_, Stored);  // not weighed again by what it writes itself
  if (!work_.commit(draft, tr("Card of %1 taken in").arg(name()))) {
    state_ = before;
    return false;
  }
  end(Stored);
  return true;
}

QString TakeCardModel::book() const {
  return card_ ? idText(card_->book) : QString();
}
QString TakeCardModel::name() const {
  return card_ ? cardName(*card_) : QString();
}
QString TakeCardModel::about() const {
  return card_ ? cardAbout(*card_) : QString();
}
QString TakeCardModel::device() const {
  return card_ ? qtext(card_->device) : QString();
}
QString TakeCardModel::words() const {
  return card_ ? qtext(weavelog::fingerprint_words(card_->key)) : QString();
}
QString TakeCardModel::made() const {
  return card_ ? dateOnPaper(work_.language(), card_->made, work_.zone()) : QString();
}
QVariantList TakeCardModel::lines() const {
  return card_ ? cardLines(work_.language(), *card_) : QVariantList();
}

int TakeCardModel::consent() const {
  if (!card_ || !findings_.held) return 0;
  const auto row = weavelog::find_player(work_.ledger(), card_->book);
  return row ? static_cast<int>(row->consent) : 0;
}

QString TakeCardModel::consentText() const {
  return qtext(weavelog::consent_text(work_.language(), static_cast<weavelog::ConsentChoice>(consent())));
}

QVariantList TakeCardModel::differing(weavelog::CardVerdict verdict) const {
  const auto& language = work_.language();
  const auto said = [&](std::string_view field, const weavelog::Value& value) {
    return weavelog::is_cleared(value) ? QString() : qtext(weavelog::value_words(language, field, value));
  };
  QVariantList out;
  for (const auto& line : findings_.lines) {
    if (line.verdict != verdict) continue;
    const auto* info = weavelog::model_registry().find(line.tag);
    const std::string_view field = info != nullptr ? info->name : std::string_view();
    const QString of = line.kind == weavelog::kSetup ? qtext(weavelog::setup_words(language, line.of)) : qtext(line.of);
    out.append(QVariantMap{{QStringLiteral("field"), fieldLabel(language, field)},
                           {QStringLiteral("of"), of},
                           {QStringLiteral("ours"), said(field, line.ours)},
                           {QStringLiteral("oursAt"), line.ours_at == 0 ? QString() : dateOnPaper(language, line.ours_at, work_.zone())},
                           {QStringLiteral("card"), said(field, line.cards)},
                           {QStringLiteral("cardAt"), dateOnPaper(language, line.cards_at, work_.zone())}});
  }
  return out;
}
