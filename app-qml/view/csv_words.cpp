#include "app-qml/view/csv_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace {

using weavelog::CsvTrouble;

// The context under which translators find all of these.
struct CsvWords {
  Q_DECLARE_TR_FUNCTIONS(CsvWords)
};

QString what(const weavelog::CsvFault& fault) {
  const auto allowed = static_cast<int>(fault.allowed);
  switch (fault.trouble) {
    case CsvTrouble::file_too_large:
      return CsvWords::tr("The file is larger than %1. Split it, or leave out what is not needed.")
          .arg(QLocale().formattedDataSize(allowed, 0, QLocale::DataSizeSIFormat));
    case CsvTrouble::utf32:
    case CsvTrouble::utf16_without_mark: return CsvWords::tr("Its letters can’t be read. Save the file as UTF-8.");
    case CsvTrouble::zero_byte: return CsvWords::tr("This is no text. Choose a table saved as CSV.");
    case CsvTrouble::not_utf8:
    case CsvTrouble::not_the_encoding: return CsvWords::tr("A letter can’t be read. Save the file as UTF-8, or choose its encoding.");
    case CsvTrouble::empty: return CsvWords::tr("The file is empty. Choose one whose first line names the columns.");
    case CsvTrouble::too_many_rows: return CsvWords::tr("There are more than %n row(s). Split the file.", "", allowed);
    case CsvTrouble::too_many_columns: return CsvWords::tr("There are more than %n column(s). Leave out what is not needed.", "", allowed);
    case CsvTrouble::field_too_long: return CsvWords::tr("The field is too long. Shorten it, or look for a missing quotation mark.");
    case CsvTrouble::field_count:
      return CsvWords::tr("The row has %n field(s)", "", static_cast<int>(fault.found)) + QStringLiteral(", ") +
             CsvWords::tr("the first line %1. A separator is missing or too many, or a field that holds one needs quotation marks.").arg(allowed);
    case CsvTrouble::stray_quote:
      return CsvWords::tr("A quotation mark stands inside a field. Put the whole field in quotation marks and double those inside it.");
    case CsvTrouble::text_after_quote: return CsvWords::tr("Text stands after the closing quotation mark. Double the quotation marks inside a field.");
    case CsvTrouble::quote_never_ends: return CsvWords::tr("A quotation mark opens here and is never closed.");
  }
  return {};
}

}  // namespace

QString csvFaultText(const weavelog::CsvFault& fault) {
  if (fault.line == 0) return what(fault);
  const QString where = fault.column == 0 ? CsvWords::tr("Line %1").arg(fault.line) : CsvWords::tr("Line %1, column %2").arg(fault.line).arg(fault.column);
  return where + QStringLiteral(": ") + what(fault);
}
