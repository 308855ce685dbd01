#include "app-qml/view/print_model.h"

#include <QQmlEngine>
#include <QSaveFile>
#include <algorithm>
#include <cmath>

#include "app-qml/papers/paper_words.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/photo_image.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/save_note.h"
#include "app-qml/view/saved_file.h"
#include "core/desk/export.h"
#include "core/desk/person_books.h"

namespace {

// Papers that share a choice of size.
QString groupOf(PaperKind kind) {
  switch (kind) {
    case PaperKind::tags:
    case PaperKind::bagTags:
      return QStringLiteral("tags");
    case PaperKind::labels:
      return QStringLiteral("labels");
    case PaperKind::card:
      return QStringLiteral("cards");
    case PaperKind::cardSheet:
      return QStringLiteral("card-sheets");
    default:
      return QStringLiteral("lists");
  }
}

QString sizeWords(const weavelog::Language& language, const PaperSize& size) {
  const auto width = static_cast<std::int64_t>(std::lround(size.page.width()));
  const auto height = static_cast<std::int64_t>(std::lround(size.page.height()));
  if (size.columns > 1) return paperSay(language, "size.labels", {{"columns", std::int64_t{size.columns}}, {"rows", std::int64_t{size.rows}}});
  if (height == 0) return paperSay(language, "size.roll", {{"width", width}});
  if (width == 210) return QStringLiteral("A4");
  return QStringLiteral("%1 × %2 mm").arg(width).arg(height);
}

QString kindWords(const weavelog::Language& language, PaperKind kind) {
  std::string key = "paper." + std::string(nameOf(kind));
  std::replace(key.begin(), key.end(), '-', '_');
  return paperSay(language, key);
}

}  // namespace

PrintModel::PrintModel(Work& work, Settings& settings, QObject* parent) : QObject(parent), work_(work), settings_(settings) {
  connect(&printers_, &Printers::changed, this, &PrintModel::printersKnown);
  connect(&printers_, &Printers::printed, this, [this](const QString& printer) {
    settings_.setPrinter(printer);
    end(Printed, printer);
  });
  connect(&printers_, &Printers::failed, this, [this](Printers::Trouble trouble, const QString& said) {
    switch (trouble) {
      case Printers::Trouble::noPrinting:
        return end(NoPrinting, said);
      case Printers::Trouble::notWritten:
        return end(NotWritten, said);
      case Printers::Trouble::refused:
        return end(Refused, said);
      case Printers::Trouble::silent:
        return end(Silent, said);
    }
  });
}

PrintModel* PrintModel::create(QQmlEngine* engine, QJSEngine*) {
  AppDevice& device = *provided<AppDevice>(engine);
  auto* made = new PrintModel(device.work(), *provided<Settings>(engine));  // the engine takes it over
  made->setPictures(heldPhotos(device.station().contents()));
  return made;
}

void PrintModel::showJob(const QString& book, const QString& job) {
  const auto row = weavelog::find_job(work_.ledger(), bookOf(book), entityOf(job));
  std::vector<weavelog::JobRow> jobs;
  if (row) jobs.push_back(*row);
  show({PaperKind::tags, PaperKind::bagTags, PaperKind::statement}, bookOf(book), std::move(jobs));
}

void PrintModel::showDropOff(const QString& book, bool atOnce) {
  show({PaperKind::tags, PaperKind::bagTags}, bookOf(book), newestDropOff(work_.ledger(), bookOf(book)));
  atOnce_ = atOnce;
}

void PrintModel::showRoom() {
  show({PaperKind::workList, PaperKind::pickUpList, PaperKind::labels, PaperKind::tags, PaperKind::bagTags, PaperKind::wrapUp}, {},
       openJobs(work_.ledger(), work_.event()));
}

void PrintModel::showCards(const QStringList& books) {
  std::vector<weavelog::BookId> players;
  for (const QString& book : books) players.push_back(bookOf(book));
  std::vector<PaperKind> kinds{PaperKind::card, PaperKind::cardSheet};
  if (players.size() > 1) std::swap(kinds.front(), kinds.back());
  show(std::move(kinds), {}, {}, std::move(players));
}

void PrintModel::showRecord(const QString& book) {
  show({PaperKind::record}, bookOf(book), {});
}

void PrintModel::show(std::vector<PaperKind> kinds, const weavelog::BookId& player, std::vector<weavelog::JobRow> jobs,
                      std::vector<weavelog::BookId> players) {
  kinds_ = std::move(kinds);
  request_ = {};
  request_.event = work_.event();
  // A racket of another event has that event's tag.
  if (kinds_.front() == PaperKind::tags && !jobs.empty() && jobs.front().event) request_.event = jobs.front().event;
  request_.language = work_.language();
  request_.zone = work_.zone();
  request_.now = work_.now();
  request_.player = player;
  request_.jobs = std::move(jobs);
  request_.players = std::move(players);
  request_.picture = pictures_;
  atOnce_ = false;
  end(Nothing, {});
  emit papersChanged();
  setPaper(QLatin1String(nameOf(kinds_.front())));
  printers_.look();
}

void PrintModel::leave() {
  atOnce_ = false;
  request_ = {};
  paper_ = {};
  emit pagesChanged();
}

QVariantList PrintModel::papers() const {
  QVariantList out;
  for (const PaperKind kind : kinds_)
    out.append(QVariantMap{{QStringLiteral("value"), QLatin1String(nameOf(kind))}, {QStringLiteral("text"), kindWords(work_.language(), kind)}});
  return out;
}

QVariantList PrintModel::sizes() const {
  QVariantList out;
  for (const PaperSize& size : sizesFor(request_.kind))
    out.append(QVariantMap{{QStringLiteral("value"), QLatin1String(size.key)}, {QStringLiteral("text"), sizeWords(work_.language(), size)}});
  return out;
}

int PrintModel::labels() const {
  const auto size = sizeFor(request_.kind, request_.size);
  return size && request_.kind == PaperKind::labels ? size->columns * size->rows : 0;
}

QString PrintModel::printer() const {
  for (const QString& name : {printer_, settings_.printer(), printers_.usual()})
    if (!name.isEmpty() && printers_.names().contains(name)) return name;
  return printers_.names().value(0);
}

void PrintModel::setPaper(const QString& paper) {
  const auto kind = paperKindFrom(paper);
  if (!kind || std::find(kinds_.begin(), kinds_.end(), *kind) == kinds_.end()) return;
  request_.kind = *kind;
  const auto size = sizeFor(*kind, settings_.paperSize(groupOf(*kind)));
  request_.size = QLatin1String((size ? *size : sizesFor(*kind).front()).key);
  make();
}

void PrintModel::setSize(const QString& size) {
  if (size == request_.size || !sizeFor(request_.kind, size)) return;
  request_.size = size;
  settings_.setPaperSize(groupOf(request_.kind), size);
  make();
}

void PrintModel::setStart(int start) {
  const int wanted = std::clamp(start, 1, std::max(1, labels()));
  if (wanted == request_.start) return;
  request_.start = wanted;
  make();
}

void PrintModel::setByTag(bool byTag) {
  if (byTag == request_.byTag) return;
  request_.byTag = byTag;
  make();
}

void PrintModel::setPrinter(const QString& printer) {
  printer_ = printer;
  emit printersChanged();
}

void PrintModel::make() {
  auto made = makePaper(work_.ledger(), request_);
  trouble_ = made ? QString() : QString::fromStdString(made.error().what);
  paper_ = made ? std::move(*made) : Paper{kindWords(work_.language(), request_.kind), {}, {}, {}};
  end(Nothing, {});
  emit pagesChanged();
}

QSizeF PrintModel::pageSize(int page) const {
  const PaperPage* held = this->page(page);
  return held ? held->size() : QSizeF();
}

QString PrintModel::pageText(int page) const {
  const PaperPage* held = this->page(page);
  if (!held) return {};
  QString text = held->texts().join(QStringLiteral(", "));
  return text.replace(QChar::LineSeparator, QStringLiteral(", "));
}

const PaperPage* PrintModel::page(int number) const {
  return number >= 0 && number < pages() ? &paper_.pages[static_cast<std::size_t>(number)] : nullptr;
}

void PrintModel::savePdf() {
  if (pages() == 0) return;
  const QString file = fileToSave(paper_.title, request_.now, QStringLiteral("pdf"), folder_);
  if (file.isEmpty()) return end(NotSaved, whyNotWritten(folderToSave(folder_) + u'/'));
  const auto written = writePdf(paper_, file);
  if (written) noteCards();
  written ? end(Saved, file) : end(NotSaved, file + u'\n' + whyNotWritten(file));
}

void PrintModel::noteCards() {
  const auto noted = work_.workplace().station().peers().note_handed(weavelog::HandedAs::card, {}, paper_.cards, work_.now());
  if (!noted) (void)work_.commit(weavelog::fail(noted.error()), {});
}

void PrintModel::saveData() {
  const auto person = weavelog::load_person(work_.ledger(), request_.player);
  if (!person) return end(NotSaved, QString::fromStdString(person.error().what));
  QStringList saved;
  for (const auto& record : person->records) {
    const QString file = fileToSave(paper_.title, request_.now, QStringLiteral("json"), folder_);
    if (file.isEmpty()) return end(NotSaved, folderToSave(folder_));
    QSaveFile out(file);
    const QByteArray text = QByteArray::fromStdString(weavelog::player_json(
        record, weavelog::held_in_events(work_.ledger(), record), weavelog::written_entries(work_.ledger(), record.book)));
    if (!out.open(QIODevice::WriteOnly) || out.write(text) != text.size() || !out.commit()) return end(NotSaved, file + u'\n' + whyNotWritten(file));
    saved.append(file);
  }
  end(Saved, saved.join(u'\n'));
}

void PrintModel::print() {
  if (pages() == 0 || printer().isEmpty()) return;
  end(Nothing, {});
  noteCards();
  (void)printers_.print(paper_, printer());
}

void PrintModel::printersKnown() {
  emit printersChanged();
  if (!atOnce_ || looking() || printers_.state() == Printers::State::unknown) return;
  atOnce_ = false;
  if (!settings_.printer().isEmpty() && printers_.names().contains(settings_.printer())) print();
}

void PrintModel::end(Result result, const QString& told) {
  if (result == result_ && told == told_) return;
  result_ = result;
  told_ = told;
  emit resultChanged();
}
