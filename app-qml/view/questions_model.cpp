#include "app-qml/view/questions_model.h"

#include <QQmlEngine>

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

bool QuestionsModel::close(int row, int answer, const QString& reason, const QString& say) {
  if (row < 0 || row >= count()) return false;
  const Row asked = rows_[static_cast<std::size_t>(row)];
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
  if (row < 0 || row >= count() || rows_[static_cast<std::size_t>(row)].form.entry == AnswerForm::None) return false;
  const Row asked = rows_[static_cast<std::size_t>(row)];
  const auto value = read(asked, text, unit);
  if (!value) return work_.commit(weavelog::fail(value.error()), {});
  return commitValue(asked, *value, {});
}

QString QuestionsModel::wrongWith(int row, const QString& text, const QString& unit) const {
  if (row < 0 || row >= count() || text.trimmed().isEmpty()) return {};
  const auto value = read(rows_[static_cast<std::size_t>(row)], text, unit);
  if (value) return {};
  return inOneLine(value.error());
}

bool QuestionsModel::commitValue(const Row& row, const weavelog::Value& value, const QString& say) {
  if (row.kind == Books) return settleBooks(row, value, say);
  return work_.commit(weavelog::close_question(row.question, value), say);
}

weavelog::Outcome<weavelog::Value> QuestionsModel::read(const Row& row, const QString& text,
                                                        const QString& unit) const {
  auto value = row.form.read(text, unit);
  if (!value) return value;
  // A slip of the finger is caught before it closes what two people disagree on.
  if (const auto slip = weavelog::slip_in_answer(work_.ledger(), row.question, *value))
    return weavelog::fail(weavelog::FaultCode::bad_input, slip->what(work_.language()), {}, slip->what_to_do(work_.language()));
  return value;
}

int QuestionsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> QuestionsModel::roleNames() const {
  return {{QuestionKindRole, "kind"},   {QuestionAskedRole, "player"}, {QuestionFieldRole, "field"},    {QuestionSubjectRole, "subject"},
          {QuestionEntryRole, "entry"}, {QuestionUnitsRole, "units"},  {QuestionAnswersRole, "answers"}, {QuestionTagRole, "tag"}};
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
    default:
      return {};
  }
}

void QuestionsModel::refresh() {
  std::vector<Row> rows;
  addPlaces(rows);
  addAmounts(rows);
  std::set<weavelog::BookId> books;
  for (const auto& question : work_.ledger().open_questions())
    if (weavelog::book_kind_of(question.kind) == weavelog::kPlayerBook) books.insert(question.book);
  for (const auto& book : books) addValues(rows, book);
  addBooks(rows);
  const auto before = rows_.size();
  KeyedRows::update(*this, std::move(rows));
  if (rows_.size() != before) emit countChanged();
}

QuestionsModel::Row QuestionsModel::rowOf(const weavelog::QuestionLine& line) const {
  Row row;
  row.question = line.question;
  row.book = line.question.book;
  row.entity = line.question.entity;
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
      const auto origin = [&]() -> std::string {
        const auto state = work_.ledger().entity(clash.book, placed.id);
        if (!state || state->cells.empty()) return {};
        const auto found = work_.ledger().origin(clash.book, state->cells.front().latest().dot);
        return found ? found->author.device : std::string();
      };
      row.answers.append(QVariantMap{{QStringLiteral("stage"), static_cast<int>(placed.mark.stage)},
                                     {QStringLiteral("by"), QString::fromStdString(placed.mark.by)},
                                     {QStringLiteral("device"), QString::fromStdString(origin())},
                                     {QStringLiteral("at"), work_.timeText(placed.mark.at)}});
    }
    if (sameStageByOthers(row.stages, row.answers)) row.kind = Holder;
    rows.push_back(std::move(row));
  }
}
