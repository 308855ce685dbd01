#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include "app-qml/view/answer_form.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/keyed_rows.h"
#include "core/desk/person_books.h"
#include "core/desk/questions.h"

class QQmlEngine;
class QJSEngine;

// What is open: values on which two people gave different answers while apart, rackets that two people
// moved on while apart, and what linked books of one person say differently. A person closes each; closing is an action of its own that all devices follow.
class QuestionsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
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

  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }

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

    [[nodiscard]] std::pair<weavelog::EntityId, std::uint32_t> key() const {
      // What two books say differently and what is open in one of them are two questions.
      const std::uint32_t books = kind == Books ? 0x80000000U : 0;
      return {entity, kind == Place || kind == Holder ? 0 : static_cast<std::uint32_t>(question.cell.tag) | books};
    }
    bool operator==(const Row& other) const {
      return key() == other.key() && question.cell == other.question.cell && stages == other.stages &&
             player == other.player && field == other.field && tag == other.tag && subject == other.subject &&
             answers == other.answers;
    }
  };

  void refresh();
  void addValues(std::vector<Row>& rows, const weavelog::BookId& book) const;
  // What was charged by different prices while apart.
  void addAmounts(std::vector<Row>& rows) const;
  // Where linked books differ (questions_books.cpp).
  void addBooks(std::vector<Row>& rows) const;
  [[nodiscard]] bool settleBooks(const Row& row, const weavelog::Value& value, const QString& say);
  [[nodiscard]] Row rowOf(const weavelog::QuestionLine& line) const;
  void addPlaces(std::vector<Row>& rows) const;
  [[nodiscard]] weavelog::Outcome<weavelog::Value> read(const Row& row, const QString& text,
                                                        const QString& unit) const;
  [[nodiscard]] bool commitValue(const Row& row, const weavelog::Value& value, const QString& say);

  Work& work_;
  std::vector<Row> rows_;
};
