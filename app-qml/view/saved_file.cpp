#include "app-qml/view/saved_file.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QStandardPaths>

QString folderToSave(const QString& folder) {
  return folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : folder;
}

QString fileToSave(const QString& name, qint64 now, const QString& suffix, const QString& folder) {
  const QString where = folderToSave(folder);
  if (!QDir().mkpath(where)) return {};
  static const QRegularExpression unfit(QStringLiteral("[^\\p{L}\\p{N} ._-]+"));
  const QString day = QDateTime::fromMSecsSinceEpoch(now).toString(QStringLiteral("yyyy-MM-dd HHmm"));
  const QString stem = QString(QStringLiteral("Weavelog ") + name.left(80) + u' ' + day).remove(unfit);
  QString file = QDir(where).filePath(stem + u'.' + suffix);
  for (int number = 2; QFile::exists(file); ++number) file = QDir(where).filePath(stem + QStringLiteral(" (%1).").arg(number) + suffix);
  return file;
}
