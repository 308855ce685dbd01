#pragma once
// Reads papers back with other people's programs: poppler's pdfinfo and pdftotext, and zbar.

#include <zbar.h>

#include <QProcess>
#include <QRegularExpression>

#include "app-qml/papers/paper.h"
#include "tests/app/room_jobs.h"

namespace weavelog::testing {

[[nodiscard]] inline QString runReader(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  REQUIRE(process.waitForFinished(60'000));
  REQUIRE(process.exitCode() == 0);
  return QString::fromUtf8(process.readAllStandardOutput());
}

/// Sizes of all pages, mm.
[[nodiscard]] inline std::vector<QSizeF> pageSizesIn(const QString& pdf) {
  std::vector<QSizeF> out;
  static const QRegularExpression form("Page +\\d+ size: +([0-9.]+) x ([0-9.]+) pts");
  auto found = form.globalMatch(runReader("pdfinfo", {"-f", "1", "-l", "100000", pdf}));
  while (found.hasNext()) {
    const auto match = found.next();
    out.emplace_back(match.captured(1).toDouble() * 25.4 / 72, match.captured(2).toDouble() * 25.4 / 72);
  }
  return out;
}

/// Everything that is written in it. Scripts with joined or stacked letters come back as compatibility forms, hence the normal form KC;
/// spaces and line ends are left out, since they only say how the lines were broken.
[[nodiscard]] inline QString lettersOf(QString text) {
  static const QRegularExpression gaps("[\\s\\x{2066}-\\x{2069}\\x{200e}\\x{200f}\\x{202a}-\\x{202e}]+");
  return text.normalized(QString::NormalizationForm_KC).remove(gaps);
}
[[nodiscard]] inline QString lettersIn(const QString& pdf) {
  return lettersOf(runReader("pdftotext", {"-raw", pdf, "-"}));
}

/// What a scanner reads off a picture, every code that it finds. One without any text is none: zbar sees such a Code 128 in the modules of one QR code in
/// some hundreds.
[[nodiscard]] inline QStringList codesIn(const QImage& picture) {
  const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
  QByteArray dots;
  for (int y = 0; y < grey.height(); ++y) dots.append(reinterpret_cast<const char*>(grey.constScanLine(y)), grey.width());
  zbar::ImageScanner scanner;
  zbar::Image image(static_cast<unsigned>(grey.width()), static_cast<unsigned>(grey.height()), "Y800", dots.constData(),
                    static_cast<unsigned long>(dots.size()));
  scanner.scan(image);
  QStringList out;
  for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol)
    if (const auto text = symbol->get_data(); !text.empty()) out.append(QString::fromStdString(text));
  return out;
}

/// Whether a part of a picture (mm) has no ink at all.
[[nodiscard]] inline bool isWhite(const QImage& picture, const QRectF& part, qreal dotsPerMm) {
  const QRect dots = QRectF(part.topLeft() * dotsPerMm, part.size() * dotsPerMm).toAlignedRect() & picture.rect();
  for (int y = dots.top(); y <= dots.bottom(); ++y)
    for (int x = dots.left(); x <= dots.right(); ++x)
      if (qGray(picture.pixel(x, y)) < 250) return false;
  return true;
}
/// Whether there is no ink within so many mm of the edges of a part.
[[nodiscard]] inline bool edgesAreWhite(const QImage& picture, const QRectF& part, qreal width, qreal dotsPerMm) {
  const QSizeF across(part.width(), width), along(width, part.height());
  return isWhite(picture, {part.topLeft(), across}, dotsPerMm) && isWhite(picture, {part.topLeft(), along}, dotsPerMm) &&
         isWhite(picture, {QPointF(part.left(), part.bottom() - width), across}, dotsPerMm) &&
         isWhite(picture, {QPointF(part.right() - width, part.top()), along}, dotsPerMm);
}

/// A room whose papers are printed.
struct PaperRoom : RoomOfJobs {
  [[nodiscard]] PaperRequest request(PaperKind kind, const char* size = "") const {
    PaperRequest out;
    out.kind = kind;
    out.size = QLatin1String(size);
    out.event = event;
    out.zone = "Europe/Lisbon";
    out.now = clock.now();
    out.jobs = openJobs(ledger(), event);
    return out;
  }
  [[nodiscard]] Paper made(const PaperRequest& request) const { return must(makePaper(ledger(), request)); }
  [[nodiscard]] QString pdf(const Paper& paper) const {
    const QString file = QString::fromStdString((folder / "paper.pdf").string());
    const auto written = writePdf(paper, file);
    if (!written) FAIL(written.error().message());
    return file;
  }
};

}  // namespace weavelog::testing
