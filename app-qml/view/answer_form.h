#pragma once

#include <QStringList>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/questions.h"

// What another answer to an open question is given as: by those that stand.
struct AnswerForm {
  enum Entry { None, Figure, Text };

  Entry entry = None;
  QStringList units;
  std::string currency;  // of an amount

  void take(std::string_view field, const weavelog::Value& answer);
  // Faults: bad_input for what is no such figure.
  [[nodiscard]] weavelog::Outcome<weavelog::Value> read(const QString& text, const QString& unit) const;
};

// What was typed as another answer to that question. A slip of the finger is caught before it closes what two people disagree on. Faults:
// bad_input, in the language of the screens.
[[nodiscard]] weavelog::Outcome<weavelog::Value> readAnswer(const Work& work, const AnswerForm& form, const weavelog::OpenQuestion& question,
                                                            const QString& text, const QString& unit);
// What is wrong and what to do, in one line.
[[nodiscard]] QString inOneLine(const weavelog::Fault& fault);
// {text, device, event, at, dot}
[[nodiscard]] QVariantMap shownAnswer(const Work& work, const weavelog::QuestionLine& line, const weavelog::AnswerLine& answer);
