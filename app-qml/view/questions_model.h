#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include <map>
#include <tuple>

#include "app-qml/view/answer_form.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/keyed_rows.h"
#include "core/desk/person_books.h"
#include "core/desk/questions.h"
#include "core/desk/stages.h"

class QQmlEngine;
class QJSEngine;

// What is open: values on which two people gave different answers while apart, rackets that two people
// moved on while apart, and what linked books of one person say differently. A person closes each; closing is an action of its own that all devices follow.
//
// A question that somebody answers here keeps its place and its answers in their order. Closed elsewhere meanwhile it says so and takes no answer;
// where another answer came in, it takes one only from who has seen that too.
class QuestionsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Those that are open.
  Q_PROPERTY(int count READ count NOTIFY countChanged)

 public:
  // A value; where a racket is; who has it, where all say the same stage; what something costs; a value in linked books.
  enum Kind { Value, Place, Holder, Amount, Books };
  Q_ENUM(Kind)
  // What another answer is given as.
  enum Entry { None = AnswerForm::None, Figure = AnswerForm::Figure, Text = AnswerForm::Text };
  Q_ENUM(Entry)

  explicit QuestionsModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static QuestionsModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] int count() const;

  // Somebody looks at the answers of a row to choose one; from now on these are the ones that were seen.
  Q_INVOKABLE void begin(int row);
  // How it was closed elsewhere was read, or nobody answers it here any more.
  Q_INVOKABLE void leave(int row);
  // Closes a question by one of its answers (from 0, as in the role). `reason` is kept beside a place's
  // stage; `say` is what the toast says. Who has a racket is closed with the name that the answer gives.
  // False: failed() has told why, and the question is still open.
  Q_INVOKABLE bool close(int row, int answer, const QString& reason, const QString& say);
  // Closes a value's question by another answer; `unit` is one of the role `units`, or empty.
  Q_INVOKABLE bool closeOtherwise(int row, const QString& text, const QString& unit);
  // Whether another answer could be meant: "" or what is wrong with it and what to do.
  Q_INVOKABLE QString wrongWith(int row, const QString& text, const QString& unit) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();

 private:
  friend struct KeyedRows;

  using Key = std::tuple<weavelog::BookId, weavelog::EntityId, std::uint32_t>;
  struct Row {
    Kind kind = Value;
    weavelog::OpenQuestion question;  // of a value
    weavelog::BookId book;
    weavelog::EntityId entity;            // the setup or job it is about
    std::vector<weavelog::Stage> stages;  // of a place, as its answers
    QString player, field, subject, tag;  // the tag number of an amount's job
    AnswerForm form;
    QVariantList answers;
    weavelog::BookDifference difference;  // of linked books
    std::string_view name;                // of the field, in the registry
    QVariantMap closed;                   // elsewhere, while it was answered here: like one of the answers
    bool anotherCame = false;             // an answer, since somebody began to answer it here

    [[nodiscard]] Key key() const {
      // What two books say differently and what is open in one of them are two questions.
      const std::uint32_t books = kind == Books ? 0x80000000U : 0;
      // A thing may stand in two books of one person under one number.
      return {book, entity, kind == Place || kind == Holder ? 0 : static_cast<std::uint32_t>(question.cell.tag) | books};
    }
    // Tells the answers that stand there from any others.
    [[nodiscard]] QStringList signs() const;
    // The answers in the order in which they stood before, others below: no finger finds another one under it.
    void keepOrderOf(const Row& before);
    bool operator==(const Row& other) const {
      return key() == other.key() && kind == other.kind && question.cell == other.question.cell && stages == other.stages &&
             player == other.player && field == other.field && tag == other.tag && subject == other.subject && answers == other.answers &&
             closed == other.closed && anotherCame == other.anotherCame;
    }
  };

  void refresh();
  [[nodiscard]] std::vector<Row> openRows() const;
  // A row as it stood before, beside what is open now.
  void follow(const Row& before, std::vector<Row>& rows, std::size_t at) const;
  // How the question was closed, as an answer.
  [[nodiscard]] QVariantMap closedHow(const Row& row) const;
  // Whether it still stands as it was seen here. If not, failed() has told so.
  [[nodiscard]] bool stands(const Row& row);
  // Writes the answer; the question is not told as closed elsewhere then.
  template <class Write>
  [[nodiscard]] bool closeHere(const Row& row, Write write);
  void addValues(std::vector<Row>& rows, const weavelog::BookId& book) const;
  // What was charged by different prices while apart.
  void addAmounts(std::vector<Row>& rows) const;
  // Where linked books differ (questions_books.cpp).
  void addBooks(std::vector<Row>& rows) const;
  [[nodiscard]] bool settleBooks(const Row& row, const weavelog::Value& value, const QString& say);
  [[nodiscard]] Row rowOf(const weavelog::QuestionLine& line) const;
  void addPlaces(std::vector<Row>& rows) const;
  [[nodiscard]] QVariantMap placeAnswer(const weavelog::BookId& book, const weavelog::PlacedMark& placed) const;
  [[nodiscard]] bool closeWith(const Row& asked, int answer, const QString& reason, const QString& say);
  [[nodiscard]] bool commitValue(const Row& row, const weavelog::Value& value, const QString& say);

  Work& work_;
  std::vector<Row> rows_;
  std::map<Key, QStringList> begun_;  // those that are answered here, with the answers that were seen
};
