#include "app-qml/view/questions_model.h"

#include <QQmlEngine>

#include <algorithm>
#include <numeric>
#include <set>

#include "app-qml/view/app_device.h"
#include "app-qml/view/provided.h"
#include "core/desk/bench.h"
#include "core/desk/phrases.h"
#include "core/model/book_kind.h"

namespace {

enum QuestionRole {
  QuestionKindRole = Qt::UserRole + 1,
  QuestionAskedRole,
  QuestionFieldRole,
  QuestionSubjectRole,
  QuestionEntryRole,
  QuestionUnitsRole,
  QuestionAnswersRole,
  QuestionTagRole,
  QuestionClosedRole,
  QuestionAnotherCameRole,
};

// All say the same stage, each under another name: what is open is who has the racket.
bool sameStageByOthers(const std::vector<weavelog::Stage>& stages, const QVariantList& answers) {
  std::set<QString> names;
  for (const auto& answer : answers) names.insert(answer.toMap().value(QStringLiteral("by")).toString());
  return std::set(stages.begin(), stages.end()).size() == 1 && names.size() == stages.size() &&
         !names.contains({});
}

}  // namespace

QuestionsModel::QuestionsModel(Work& work, QObject* parent) : QAbstractListModel(parent), work_(work) {
  connect(&work_, &Work::changed, this, &QuestionsModel::refresh);
  refresh();
}

QuestionsModel* QuestionsModel::create(QQmlEngine* engine, QJSEngine*) {
  return new QuestionsModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

int QuestionsModel::count() const {
  return static_cast<int>(std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return row.closed.isEmpty(); }));
}

void QuestionsModel::begin(int row) {
  if (row < 0 || row >= rowCount()) return;
  const Row& asked = rows_[static_cast<std::size_t>(row)];
  if (!asked.closed.isEmpty()) return;
  begun_[asked.key()] = asked.signs();
  refresh();
}

void QuestionsModel::leave(int row) {
  if (row < 0 || row >= rowCount()) return;
  begun_.erase(rows_[static_cast<std::size_t>(row)].key());
  refresh();
}

bool QuestionsModel::stands(const Row& row) {
  if (row.closed.isEmpty() && !row.anotherCame) {
    QStringList seen = row.signs();
    seen.sort();
    for (const Row& now : openRows()) {
      QStringList signs = now.signs();
      signs.sort();
      if (now.key() == row.key() && signs == seen) return true;
    }
  }
  // What is on the screen was true a moment ago.
  begun_.try_emplace(row.key(), row.signs());
  refresh();
  work_.tell({weavelog::FaultCode::conflict, tr("this question was answered at another tablet meanwhile").toStdString(), {},
              tr("look at what stands there now").toStdString()});
  return false;
}

template <class Write>
bool QuestionsModel::closeHere(const Row& row, Write write) {
  if (!stands(row)) return false;
  const auto before = begun_.extract(row.key());
  if (write()) return true;
  if (!before.empty()) begun_[row.key()] = before.mapped();
  refresh();
  return false;
}

bool QuestionsModel::close(int row, int answer, const QString& reason, const QString& say) {
  if (row < 0 || row >= rowCount()) return false;
  const Row asked = rows_[static_cast<std::size_t>(row)];
  return closeHere(asked, [&] { return closeWith(asked, answer, reason, say); });
}

bool QuestionsModel::closeWith(const Row& asked, int answer, const QString& reason, const QString& say) {
  const auto at = static_cast<std::size_t>(answer);
  if (asked.kind == Value || asked.kind == Amount) {
    const auto value = asked.answers.value(answer).toMap().value(QStringLiteral("dot"));
    for (const auto& held : asked.question.cell.values)
      if (QString::fromStdString(held.dot.author.hex()) + QString::number(held.dot.seq) == value.toString())
        return commitValue(asked, held.value, say);
    return false;
  }
  if (asked.kind == Books)
    return at < asked.difference.answers.size() && settleBooks(asked, asked.difference.answers[at].value, say);
  if (answer < 0 || at >= asked.stages.size()) return false;
  const auto record = weavelog::load_player(work_.ledger(), asked.book);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const QString by = asked.kind == Holder
                         ? asked.answers.value(answer).toMap().value(QStringLiteral("by")).toString()
                         : work_.who();
  const weavelog::StageStep step{asked.stages[at], by.toStdString(), reason.trimmed().toStdString(),
                                 work_.now()};
  return work_.commit(weavelog::step_at_bench(*record, asked.entity, step), say);
}

bool QuestionsModel::closeOtherwise(int row, const QString& text, const QString& unit) {
  if (row < 0 || row >= rowCount() || rows_[static_cast<std::size_t>(row)].form.entry == AnswerForm::None) return false;
  const Row asked = rows_[static_cast<std::size_t>(row)];
  const auto value = readAnswer(work_, asked.form, asked.question, text, unit);
  if (!value) return work_.commit(weavelog::fail(value.error()), {});
  return closeHere(asked, [&] { return commitValue(asked, *value, {}); });
}

QString QuestionsModel::wrongWith(int row, const QString& text, const QString& unit) const {
  if (row < 0 || row >= rowCount() || text.trimmed().isEmpty()) return {};
  const Row& asked = rows_[static_cast<std::size_t>(row)];
  const auto value = readAnswer(work_, asked.form, asked.question, text, unit);
  if (value) return {};
  return inOneLine(value.error());
}

bool QuestionsModel::commitValue(const Row& row, const weavelog::Value& value, const QString& say) {
  if (row.kind == Books) return settleBooks(row, value, say);
  return work_.commit(weavelog::close_question(row.question, value), say);
}

int QuestionsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QHash<int, QByteArray> QuestionsModel::roleNames() const {
  return {{QuestionKindRole, "kind"},   {QuestionAskedRole, "player"}, {QuestionFieldRole, "field"},    {QuestionSubjectRole, "subject"},
          {QuestionEntryRole, "entry"}, {QuestionUnitsRole, "units"},  {QuestionAnswersRole, "answers"}, {QuestionTagRole, "tag"},
          {QuestionClosedRole, "closed"}, {QuestionAnotherCameRole, "anotherCame"}};
}

QVariant QuestionsModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
    case QuestionAskedRole:
      return row.player;
    case QuestionKindRole:
      return row.kind;
    case QuestionFieldRole:
      return row.field;
    case QuestionSubjectRole:
      return row.subject;
    case QuestionEntryRole:
      return static_cast<int>(row.form.entry);
    case QuestionUnitsRole:
      return row.form.units;
    case QuestionAnswersRole:
      return row.answers;
    case QuestionTagRole:
      return row.tag;
    case QuestionClosedRole:
      return row.closed;
    case QuestionAnotherCameRole:
      return row.anotherCame;
    default:
      return {};
  }
}

std::vector<QuestionsModel::Row> QuestionsModel::openRows() const {
  std::vector<Row> rows;
  addPlaces(rows);
  addAmounts(rows);
  std::set<weavelog::BookId> books;
  for (const auto& question : work_.ledger().open_questions())
    if (weavelog::book_kind_of(question.kind) == weavelog::kPlayerBook) books.insert(question.book);
  for (const auto& book : books) addValues(rows, book);
  addBooks(rows);
  return rows;
}

void QuestionsModel::refresh() {
  std::vector<Row> rows = openRows();
  for (std::size_t i = 0; i < rows_.size(); ++i) follow(rows_[i], rows, i);
  const int before = count();
  KeyedRows::update(*this, std::move(rows));
  if (count() != before) emit countChanged();
}

QStringList QuestionsModel::Row::signs() const {
  QStringList out;
  for (const auto& answer : answers) {
    const auto held = answer.toMap();
    const QString dot = held.value(QStringLiteral("dot")).toString();
    out.append(!dot.isEmpty() ? dot : held.value(QStringLiteral("mark")).toString());
  }
  return out;
}

void QuestionsModel::Row::keepOrderOf(const Row& before) {
  const QStringList earlier = before.signs(), now = signs();
  std::vector<qsizetype> order(static_cast<std::size_t>(now.size()));
  std::iota(order.begin(), order.end(), qsizetype{0});
  const auto place = [&](qsizetype at) {
    const auto found = earlier.indexOf(now[at]);
    return found < 0 ? earlier.size() : found;
  };
  std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return place(a) < place(b); });
  const Row as = *this;
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto from = static_cast<std::size_t>(order[i]);
    answers[static_cast<qsizetype>(i)] = as.answers[order[i]];
    if (from < as.stages.size()) stages[i] = as.stages[from];
    if (from < as.difference.answers.size()) difference.answers[i] = as.difference.answers[from];
  }
}

void QuestionsModel::follow(const Row& before, std::vector<Row>& rows, std::size_t at) const {
  const auto now = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.key() == before.key(); });
  const auto begun = begun_.find(before.key());
  if (now == rows.end()) {
    if (begun == begun_.end()) return;
    Row closed = before;
    closed.closed = closedHow(before);
    rows.insert(rows.begin() + static_cast<std::ptrdiff_t>(std::min(at, rows.size())), std::move(closed));
    return;
  }
  now->keepOrderOf(before);
  const QStringList signs = now->signs();
  now->anotherCame = begun != begun_.end() && std::any_of(signs.begin(), signs.end(), [&](const auto& sign) { return !begun->second.contains(sign); });
}

QVariantMap QuestionsModel::closedHow(const Row& row) const {
  const QVariantMap unknown{{QStringLiteral("text"), QString()}, {QStringLiteral("device"), QString()}, {QStringLiteral("at"), QString()}};
  if (row.kind == Place || row.kind == Holder) {
    const auto record = weavelog::load_player(work_.ledger(), row.book);
    const auto* job = record ? record->job(row.entity) : nullptr;
    if (job == nullptr) return unknown;
    const auto now = record->stage_of(row.entity);
    for (const auto& placed : weavelog::marks_of(*record, row.entity))
      if (!now.newest.empty() && placed.id == now.newest.front()) return placeAnswer(row.book, placed);
    return unknown;
  }
  const auto line = weavelog::closed_line(work_.ledger(), row.book, row.entity, row.name);
  return line ? shownAnswer(work_, *line, line->answers.front()) : unknown;
}

QuestionsModel::Row QuestionsModel::rowOf(const weavelog::QuestionLine& line) const {
  Row row;
  row.question = line.question;
  row.book = line.question.book;
  row.entity = line.question.entity;
  row.name = line.field;
  row.field = QString::fromStdString(weavelog::field_words(work_.language(), line.field));
  if (!row.field.isEmpty()) row.field[0] = row.field[0].toUpper();
  row.subject = QString::fromStdString(weavelog::setup_words(work_.language(), line.subject));
  row.form.currency = line.currency;
  for (const auto& answer : line.answers) {
    row.form.take(line.field, answer.value);
    row.answers.append(shownAnswer(work_, line, answer));
  }
  return row;
}

void QuestionsModel::addValues(std::vector<Row>& rows, const weavelog::BookId& book) const {
  const auto record = weavelog::load_player(work_.ledger(), book);
  if (!record) return;
  for (const auto& line : weavelog::question_lines(work_.ledger(), *record)) {
    Row row = rowOf(line);
    row.player = QString::fromStdString(weavelog::listed_name(record->person.now));
    rows.push_back(std::move(row));
  }
}

void QuestionsModel::addAmounts(std::vector<Row>& rows) const {
  std::set<weavelog::BookId> events;
  for (const auto& question : work_.ledger().open_questions())
    if (question.kind == weavelog::kCharge) events.insert(question.book);
  for (const auto& event : events)
    for (const auto& line : weavelog::money_questions(work_.ledger(), event)) {
      Row row = rowOf(line);
      row.kind = Amount;
      const auto record = weavelog::load_player(work_.ledger(), line.player);
      // Whose book is not held here is named by its number.
      row.player = QString::fromStdString(record ? weavelog::listed_name(record->person.now) : line.player.hex().substr(0, 8));
      if (line.tag_number) row.tag = QString::number(*line.tag_number);
      rows.push_back(std::move(row));
    }
}

QVariantMap QuestionsModel::placeAnswer(const weavelog::BookId& book, const weavelog::PlacedMark& placed) const {
  const auto state = work_.ledger().entity(book, placed.id);
  const auto found = state && !state->cells.empty() ? work_.ledger().origin(book, state->cells.front().latest().dot) : std::nullopt;
  return {{QStringLiteral("stage"), static_cast<int>(placed.mark.stage)},
          {QStringLiteral("by"), QString::fromStdString(placed.mark.by)},
          {QStringLiteral("device"), found ? QString::fromStdString(found->author.device) : QString()},
          {QStringLiteral("at"), work_.timeText(placed.mark.at)},
          {QStringLiteral("mark"), QString::fromStdString(placed.id.hex())}};
}

void QuestionsModel::addPlaces(std::vector<Row>& rows) const {
  if (!work_.event()) return;
  for (const auto& clash : weavelog::clashing_jobs(work_.ledger(), work_.event())) {
    const auto record = weavelog::load_player(work_.ledger(), clash.book);
    if (!record) continue;
    Row row;
    row.kind = Place;
    row.book = clash.book;
    row.entity = clash.job;
    row.player = playerOf(clash);
    row.subject = QString::fromStdString(clash.racket_label);
    row.field = clash.tag_number ? QString::number(*clash.tag_number) : QString();
    const auto now = record->stage_of(clash.job);
    for (const auto& placed : weavelog::marks_of(*record, clash.job)) {
      if (std::find(now.newest.begin(), now.newest.end(), placed.id) == now.newest.end()) continue;
      row.stages.push_back(placed.mark.stage);
      row.answers.append(placeAnswer(clash.book, placed));
    }
    if (sameStageByOthers(row.stages, row.answers)) row.kind = Holder;
    rows.push_back(std::move(row));
  }
}
