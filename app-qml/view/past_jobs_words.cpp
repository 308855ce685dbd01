#include "app-qml/view/past_jobs_words.h"

#include <map>

#include "app-qml/view/csv_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/past_jobs_model.h"

QString pastMeaning(std::string_view ours) {
  static const std::map<std::string_view, const char*> words{{"", QT_TRANSLATE_NOOP("PastJobsModel", "Not used")},
                                                             {"family_name", QT_TRANSLATE_NOOP("PastJobsModel", "Family name")},
                                                             {"given_name", QT_TRANSLATE_NOOP("PastJobsModel", "Given name")},
                                                             {"name", QT_TRANSLATE_NOOP("PastJobsModel", "Whole name")},
                                                             {"native_name", QT_TRANSLATE_NOOP("PastJobsModel", "Name in own script")},
                                                             {"country", QT_TRANSLATE_NOOP("PastJobsModel", "Country, three letters")},
                                                             {"birth_year", QT_TRANSLATE_NOOP("PastJobsModel", "Year of birth")},
                                                             {"hand", QT_TRANSLATE_NOOP("PastJobsModel", "Hand")},
                                                             {"tour_number", QT_TRANSLATE_NOOP("PastJobsModel", "Tour number")},
                                                             {"date", QT_TRANSLATE_NOOP("PastJobsModel", "Day")},
                                                             {"event", QT_TRANSLATE_NOOP("PastJobsModel", "Event")},
                                                             {"racket", QT_TRANSLATE_NOOP("PastJobsModel", "Racket’s mark")},
                                                             {"maker", QT_TRANSLATE_NOOP("PastJobsModel", "Racket’s maker")},
                                                             {"model", QT_TRANSLATE_NOOP("PastJobsModel", "Racket’s model")},
                                                             {"mains_string", QT_TRANSLATE_NOOP("PastJobsModel", "String of the mains")},
                                                             {"mains_gauge", QT_TRANSLATE_NOOP("PastJobsModel", "Gauge of the mains")},
                                                             {"mains_tension", QT_TRANSLATE_NOOP("PastJobsModel", "Tension of the mains")},
                                                             {"crosses_string", QT_TRANSLATE_NOOP("PastJobsModel", "String of the crosses")},
                                                             {"crosses_gauge", QT_TRANSLATE_NOOP("PastJobsModel", "Gauge of the crosses")},
                                                             {"crosses_tension", QT_TRANSLATE_NOOP("PastJobsModel", "Tension of the crosses")},
                                                             {"string", QT_TRANSLATE_NOOP("PastJobsModel", "String (mains / crosses)")},
                                                             {"tension", QT_TRANSLATE_NOOP("PastJobsModel", "Tension (mains / crosses)")},
                                                             {"prestretch", QT_TRANSLATE_NOOP("PastJobsModel", "Pre-stretch")},
                                                             {"stringer", QT_TRANSLATE_NOOP("PastJobsModel", "Who strung it")},
                                                             {"note", QT_TRANSLATE_NOOP("PastJobsModel", "Note")}};
  const auto found = words.find(ours);
  return found == words.end() ? qtext(ours) : PastJobsModel::tr(found->second);
}

namespace {

// What a cell of that column should have been.
QString expectedIn(const std::string& ours) {
  if (weavelog::holds_tension(ours)) return PastJobsModel::tr("a tension, such as 25, 25.5 kg or 55 lb");
  if (ours == "mains_gauge" || ours == "crosses_gauge") return PastJobsModel::tr("a gauge in mm, such as 1.25");
  if (ours == "prestretch") return PastJobsModel::tr("per cent from 0 to 30");
  if (ours == "date") return PastJobsModel::tr("a day, such as 2031-05-26 or 26.05.2031");
  if (ours == "country") return PastJobsModel::tr("three letters, such as POR");
  if (ours == "birth_year") return PastJobsModel::tr("a year from 1900 to 2099");
  if (ours == "hand") return PastJobsModel::tr("right or left");
  if (ours == "name" || ours == "family_name") return PastJobsModel::tr("a name");
  return PastJobsModel::tr("a shorter text");
}

}  // namespace

QString pastFaultText(const weavelog::PastFault& fault) {
  if (fault.broken) return csvFaultText(*fault.broken);
  const QString where = PastJobsModel::tr("Line %1, %2").arg(QString::number(fault.line), pastMeaning(fault.ours));
  if (fault.odd_unit)
    return where + QStringLiteral(": ") + PastJobsModel::tr("this is no tension in the unit of the others; write its unit beside it.");
  if (fault.cell.empty()) return where + QStringLiteral(": ") + PastJobsModel::tr("nothing stands there.");
  if (fault.to_come)
    return where + QStringLiteral(": ") + PastJobsModel::tr("“%1” is still to come, by this tablet’s clock.").arg(qtext(fault.cell));
  return where + QStringLiteral(": ") + PastJobsModel::tr("“%1” is not %2.").arg(qtext(fault.cell), expectedIn(fault.ours));
}
