#include "app-qml/papers/tag_content.h"

#include <QTextBoundaryFinder>

#include "app-qml/papers/paper_page.h"
#include "app-qml/papers/paper_words.h"
#include "core/desk/phrases.h"
#include "core/desk/tag_code.h"
#include "core/model/player.h"

namespace {

QString stringWords(const weavelog::Language& language, const std::string& name, const std::optional<weavelog::Quantity>& gauge) {
  QStringList parts{words(name), saidOnPaper(language, gauge)};
  parts.removeAll(QString());
  return parts.join(u' ');
}

TagContent::Tension tensionWords(const weavelog::Language& language, const std::optional<weavelog::Quantity>& tension) {
  if (!tension) return {};
  const auto unit = weavelog::symbol_of(tension->unit);
  return {words(weavelog::localised(language, tension->amount)), QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()))};
}

QString stretchWords(const weavelog::Language& language, const std::optional<weavelog::Quantity>& stretch) {
  return stretch ? paperSay(language, "tag.prestretch", {{"value", *stretch}}) : QString();
}

QString stretchOfBoth(const weavelog::Language& language, const weavelog::Agreed& agreed) {
  const auto& mains = agreed.mains_prestretch;
  const auto& crosses = agreed.crosses_prestretch;
  if (!mains && !crosses) return {};
  if (mains == crosses) return stretchWords(language, mains);
  const auto one = [&](const auto& stretch) { return stretch ? weavelog::localised(language, *stretch) : std::string("–"); };
  return paperSay(language, "tag.prestretch", {{"value", one(mains) + " / " + one(crosses)}});
}

QString stencilWords(const weavelog::Language& language, const weavelog::Agreed& agreed) {
  const auto one = [&](const char* key, const std::string& mark, const std::string& ink) {
    if (mark.empty() && ink.empty()) return QString();
    return paperSay(language, key,
                    {{"mark", mark.empty() ? ink : mark}, {"inked", std::string(mark.empty() || ink.empty() ? "no" : "yes")}, {"ink", ink}});
  };
  return joinedOnPaper(
      {one("tag.stencil", agreed.racket_stencil, agreed.racket_ink), one("tag.string_stencil", agreed.string_stencil, agreed.string_ink)});
}

QString makingWords(const weavelog::Language& language, const weavelog::Agreed& agreed) {
  return joinedOnPaper({agreed.pieces ? paperSay(language, "tag.pieces", {{"pieces", *agreed.pieces}}) : QString(),
                        agreed.knots ? paperSay(language, "tag.knots", {{"knots", *agreed.knots}}) : QString(),
                        agreed.knot_pretension && agreed.knot_pretension->amount.mantissa != 0
                            ? paperSay(language, "tag.knot_pretension", {{"value", *agreed.knot_pretension}})
                            : QString()});
}

QString fieldOf(const weavelog::Language& language, weavelog::FieldTag tag) {
  const auto* info = weavelog::model_registry().find(tag);
  return info ? words(weavelog::field_words(language, info->name)) : QString();
}

}  // namespace

QString nameOnTag(const TagContent& tag) {
  if (!tag.family.isEmpty()) return tag.family;
  if (!tag.given.isEmpty()) return tag.given;
  return tag.native;
}

QString initialsOf(const std::string& given) {
  QStringList out;
  const auto parts = words(given).split(u' ', Qt::SkipEmptyParts);
  for (const QString& part : parts) {
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, part);
    const auto end = finder.toNextBoundary();
    const QString first = part.left(end > 0 ? end : part.size());
    if (!first.at(0).isUpper()) return {};
    out.append(first + u'.');
  }
  return out.join(u' ');
}

QString tensionsOnTag(const TagContent& tag) {
  const auto& mains = tag.mainsTension;
  const auto& crosses = tag.crossesTension;
  if (mains.amount.isEmpty() && crosses.amount.isEmpty()) return {};
  const auto one = [](const TagContent::Tension& tension, bool unit) {
    if (tension.amount.isEmpty()) return QStringLiteral("–");
    return unit ? tension.amount + QChar::Nbsp + tension.unit : tension.amount;
  };
  return one(mains, mains.unit != crosses.unit) + QStringLiteral(" / ") + one(crosses, true);
}

std::vector<TagContent> tagContents(const weavelog::Ledger& ledger, std::span<const weavelog::JobRow> jobs, const weavelog::Language& language,
                                    const std::string& zone) {
  std::vector<TagContent> out;
  out.reserve(jobs.size());
  const auto questions = ledger.open_questions();
  for (const weavelog::JobRow& row : jobs) {
    const auto state = ledger.entity(row.book, row.job);
    if (!state) continue;
    const auto job = weavelog::from_state<weavelog::Job>(*state);
    TagContent tag;
    tag.player = row.book;
    tag.dropOff = row.drop_off;
    if (const auto handOver = ledger.entity(row.book, row.drop_off))
      tag.bags = weavelog::from_state<weavelog::DropOff>(*handOver).bags.value_or(0);
    tag.number = row.tag_number.value_or(0);
    tag.family = words(row.family_name);
    tag.given = words(row.given_name);
    tag.native = words(row.native_name);
    tag.initials = initialsOf(row.given_name);
    tag.racket = joinedOnPaper({words(row.racket_label), words(row.racket_model)});
    tag.mains = stringWords(language, job.mains_string, job.mains_gauge);
    tag.crosses = stringWords(language, job.crosses_string, job.crosses_gauge);
    tag.mainsTension = tensionWords(language, job.mains_tension);
    tag.crossesTension = tensionWords(language, job.crosses_tension);
    tag.mainsPrestretch = stretchWords(language, job.mains_prestretch);
    tag.crossesPrestretch = stretchWords(language, job.crosses_prestretch);
    tag.prestretch = stretchOfBoth(language, job);
    tag.making = makingWords(language, job);
    tag.stencil = stencilWords(language, job);
    tag.note = words(job.note);
    QStringList open;
    for (const auto& question : questions)
      if (question.book == row.book && question.entity == row.job) open.append(fieldOf(language, question.cell.tag));
    if (!open.isEmpty()) tag.unanswered = paperSay(language, "tag.unanswered", {{"what", open.join(QStringLiteral(", ")).toStdString()}});
    tag.readyBy = timeOnPaper(language, job.ready_by, zone);
    tag.rush = job.rush;
    if (job.rush == weavelog::Rush::rush) tag.rushWords = paperSay(language, "rush.rush");
    if (job.rush == weavelog::Rush::on_court) tag.rushWords = paperSay(language, "rush.on_court");
    tag.event = words(row.event_name);
    if (const auto code = weavelog::tag_code(row.event, tag.number)) tag.code = *code;
    out.push_back(std::move(tag));
  }
  return out;
}
