#include "app-qml/view/give_card_model.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QSaveFile>

#include "app-qml/papers/card_paper.h"
#include "app-qml/papers/paper_words.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/card_words.h"
#include "app-qml/view/code_rows.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/save_note.h"
#include "app-qml/view/saved_file.h"
#include "core/model/queries.h"

GiveCardModel* GiveCardModel::create(QQmlEngine* engine, QJSEngine*) {
  return new GiveCardModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void GiveCardModel::clear() {
  book_ = name_ = text_ = made_ = device_ = troubleText_ = QString();
  rows_.clear();
  lines_.clear();
  leftOut_ = 0;
  trouble_ = None;
}

void GiveCardModel::show(const QString& book) {
  clear();
  book_ = book;
  const auto id = idFrom<weavelog::BookId>(book);
  if (const auto row = weavelog::find_player(work_.ledger(), id)) name_ = nameOnPaper(*row);
  if (const auto made = weavelog::make_card(work_.ledger(), id)) {
    name_ = cardName(made->card);
    text_ = qtext(made->text);
    rows_ = codeRows(made->text);
    lines_ = cardLines(work_.language(), made->card);
    leftOut_ = static_cast<int>(made->card.setups_left_out + made->card.rackets_left_out);
    made_ = dateOnPaper(work_.language(), made->card.made, work_.zone());
    device_ = qtext(made->card.device);
    // Whoever looks at the screen may have taken it.
    const auto noted = work_.workplace().station().peers().note_handed(weavelog::HandedAs::card, {}, {&id, 1}, work_.now());
    if (!noted) (void)work_.commit(weavelog::fail(noted.error()), {});
  } else {
    trouble_ = made.error().code == weavelog::FaultCode::refused ? NoConsent : Other;
    troubleText_ = qtext(made.error().message());
  }
  end(Nothing, {});
  emit changed();
}

void GiveCardModel::leave() {
  clear();
  end(Nothing, {});
  emit changed();
}

QString GiveCardModel::fileFor(const QString& suffix) const {
  return fileToSave(tr("card of %1").arg(name_), work_.now(), suffix, folder_);
}

void GiveCardModel::savePicture() {
  if (text_.isEmpty()) return;
  const QString file = fileFor(QStringLiteral("png"));
  if (file.isEmpty()) return end(NotSaved, whyNotWritten(folderToSave(folder_) + u'/'));
  const auto saved = saveCardPicture(text_.toStdString(), file);
  saved ? end(PictureSaved, file) : end(NotSaved, file + u'\n' + whyNotWritten(file));
}

void GiveCardModel::saveText() {
  if (text_.isEmpty()) return;
  const QString file = fileFor(QStringLiteral("txt"));
  if (file.isEmpty()) return end(NotSaved, whyNotWritten(folderToSave(folder_) + u'/'));
  QSaveFile out(file);
  const QByteArray bytes = text_.toUtf8() + '\n';
  if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.commit())
    return end(NotSaved, file + u'\n' + whyNotWritten(file));
  end(TextSaved, file);
}

void GiveCardModel::copyText() {
  if (text_.isEmpty()) return;
  QGuiApplication::clipboard()->setText(text_);
  end(TextCopied, {});
}

void GiveCardModel::end(Result result, const QString& told) {
  result_ = result;
  told_ = told;
  emit resultChanged();
}
