#include "app-qml/papers/record_paper.h"

#include "app-qml/papers/list_flow.h"
#include "app-qml/papers/list_papers.h"
#include "app-qml/papers/paper_words.h"
#include "core/desk/person_books.h"
#include "core/held/held_words.h"

namespace {

constexpr qreal pictureHeight = 70;    // mm
constexpr std::size_t longestBeside = 36;  // letters of what stands two beside each other

QString linesOf(const std::string& text) {
  return words(text).replace(u'\n', QChar::LineSeparator);
}

// Short answers two beside each other, longer ones over the whole width, in their order as far as that goes.
void tellRows(ListFlow& flow, const std::vector<weavelog::HeldRow>& held) {
  std::vector<QStringList> beside, whole;
  for (const auto& row : held) {
    const QString what = linesOf(row.what), said = linesOf(row.said);
    if (static_cast<std::size_t>(said.size()) > longestBeside || said.contains(QChar::LineSeparator)) {
      whole.push_back({what, said});
    } else if (beside.empty() || beside.back().size() == 4) {
      beside.push_back({what, said});
    } else {
      beside.back() << what << said;
    }
  }
  if (!beside.empty()) flow.table({{{}, 22}, {{}, 27, true}, {{}, 22}, {{}, 27, true}}, beside);
  if (!whole.empty()) flow.table({{{}, 22}, {{}, 77, true}}, whole);
}

}  // namespace

weavelog::Outcome<std::vector<PaperPage>> recordPages(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  const auto person = weavelog::load_person(ledger, request.player);
  if (!person) return weavelog::fail(person.error());
  const auto& first = person->records.front();
  const weavelog::Language language = languageOnPaper(first.person.now.language, request.language);
  const auto say = [&](std::string_view key, const weavelog::PhraseArgs& args = {}) { return paperSay(language, key, args); };
  ListFlow flow(size, say("record.title", {{"name", weavelog::listed_name(first.person.now)}}),
                {dateOnPaper(language, request.now, request.zone), say("record.device", {{"name", ledger.self().device}})}, pageNumbers(language));
  flow.paragraph(say("record.about", {{"zone", request.zone}}));
  for (const auto& record : person->records) {
    if (person->records.size() > 1)
      flow.paragraph(say("record.book", {{"name", weavelog::listed_name(record.person.now)}, {"book", record.book.hex()}}), true);
    for (const auto& section : weavelog::held_words(ledger, record, language, request.zone)) {
      flow.heading(words(section.title));
      for (const auto& part : section.parts) {
        flow.subheading(words(part.title));
        tellRows(flow, part.rows);
        if (part.picture.empty()) continue;
        const QImage image = request.picture ? request.picture(record.book, part.picture) : QImage();
        if (image.isNull()) {
          flow.paragraph(say("record.no_picture"));
        } else {
          flow.figure(pictureHeight, [&](PaperPage& page, const QRectF& box) { page.put(box, image); });
        }
      }
    }
  }
  for (const auto& book : person->elsewhere) flow.paragraph(say("record.elsewhere", {{"book", book.hex()}}));
  flow.heading(say("record.rights"));
  flow.paragraph(say("record.rights_text"));
  return flow.take();
}
