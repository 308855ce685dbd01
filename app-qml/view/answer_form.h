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

// A fault of a field that cannot stand, so that a slip of the finger is caught before it closes what two people disagree on.
[[nodiscard]] weavelog::Outcome<> soundAnswer(const weavelog::Agreed& agreed, std::string_view field, const weavelog::Language& language);
// What is wrong and what to do, in one line.
[[nodiscard]] QString inOneLine(const weavelog::Fault& fault);
// {text, device, event, at, dot}
[[nodiscard]] QVariantMap shownAnswer(const Work& work, const weavelog::QuestionLine& line, const weavelog::AnswerLine& answer);
