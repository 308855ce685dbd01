#include "app-qml/view/answer_form.h"

#include "app-qml/view/model_text.h"
#include "app-qml/view/money_text.h"

void AnswerForm::take(std::string_view field, const weavelog::Value& answer) {
  if (const auto* quantity = std::get_if<weavelog::Quantity>(&answer)) {
    entry = Figure;
    const QString unit = qtext(weavelog::symbol_of(quantity->unit));
    if (!units.contains(unit)) units.append(unit);
  } else if (std::holds_alternative<std::string>(answer)) {
    entry = Text;
  } else if (std::holds_alternative<std::int64_t>(answer) && field != "consent") {
    entry = Figure;
  }
}

weavelog::Outcome<weavelog::Value> AnswerForm::read(const QString& text, const QString& unit) const {
  const std::string typed = text.trimmed().toStdString();
  if (entry == Text) return weavelog::Value{typed};
  if (!currency.empty()) {
    const auto minor = moneyFrom(text, currency);
    if (!minor) return weavelog::fail(minor.error());
    return weavelog::Value{*minor};
  }
  const auto amount = weavelog::Decimal::parse(typed);
  if (!amount) return weavelog::fail(amount.error());
  if (units.isEmpty()) {
    if (amount->trimmed().scale != 0)
      return weavelog::fail(weavelog::FaultCode::bad_input, "\"" + typed + "\" is no whole number", {}, "count again");
    return weavelog::Value{amount->trimmed().mantissa};
  }
  const auto said = weavelog::unit_from(unit.toStdString());
  if (!said) return weavelog::fail(weavelog::FaultCode::bad_input, "no unit is said", {}, "choose one");
  return weavelog::Value{weavelog::Quantity{*amount, *said}};
}

weavelog::Outcome<weavelog::Value> readAnswer(const Work& work, const AnswerForm& form, const weavelog::OpenQuestion& question,
                                              const QString& text, const QString& unit) {
  auto value = form.read(text, unit);
  if (!value) return value;
  if (const auto slip = weavelog::slip_in_answer(work.ledger(), question, *value))
    return weavelog::fail(weavelog::FaultCode::bad_input, slip->what(work.language()), {}, slip->what_to_do(work.language()));
  return value;
}

QString inOneLine(const weavelog::Fault& fault) {
  return qtext(fault.what_to_do.empty() ? fault.what : fault.what + "; " + fault.what_to_do);
}

QVariantMap shownAnswer(const Work& work, const weavelog::QuestionLine& line, const weavelog::AnswerLine& answer) {
  return {{QStringLiteral("text"), qtext(weavelog::answer_words(work.language(), line, answer.value))},
          {QStringLiteral("device"), qtext(answer.device)},
          {QStringLiteral("event"), qtext(answer.event_name)},
          {QStringLiteral("at"), work.timeText(answer.at)},
          {QStringLiteral("dot"), qtext(answer.dot.author.hex()) + QString::number(answer.dot.seq)}};
}
