#include "app-qml/view/save_note.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

QString pathOf(const QUrl& file) { return file.isLocalFile() ? file.toLocalFile() : file.toString(); }

QString whyNotWritten(const QString& path) {
  const QFileInfo there(path), folder(there.absolutePath());
  if (there.exists() && !there.isFile()) return SaveNote::tr("There is something of that name that is no file; choose another name.");
  if (!folder.exists()) return SaveNote::tr("The folder is not there; choose another one.");
  if (!folder.isWritable()) return SaveNote::tr("Nothing may be written there; choose another folder.");
  return SaveNote::tr("Is there room left? Choose another folder, or make room.");
}

bool SaveNote::write(const QUrl& file, const QByteArray& bytes) {
  const QString path = pathOf(file);
  const QFileInfo there(path);
  QSaveFile out(path);
  const bool written = (!there.exists() || there.isFile()) && out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit();
  say(file, written);
  return written;
}

void SaveNote::say(const QUrl& file, bool saved) {
  const QString path = pathOf(file);
  saved_ = saved;
  text_ = saved ? tr("Saved as %1").arg(QDir::toNativeSeparators(path))
                : tr("Not saved as %1. %2").arg(QDir::toNativeSeparators(path), whyNotWritten(path));
  emit changed();
}

void SaveNote::clear() {
  if (text_.isEmpty()) return;
  text_.clear();
  emit changed();
}
