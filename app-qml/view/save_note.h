#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>

// What became of a file that was saved where a person chose: a line that says where it is, or why it is not there.
class SaveNote : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("it belongs to a model")
  // "" while nothing was saved.
  Q_PROPERTY(QString text READ text NOTIFY changed)
  Q_PROPERTY(bool saved READ saved NOTIFY changed)

 public:
  explicit SaveNote(QObject* parent) : QObject(parent) {}

  [[nodiscard]] const QString& text() const { return text_; }
  [[nodiscard]] bool saved() const { return saved_; }
  // Writes all of it or nothing, and says so. What is no file is not replaced by one.
  bool write(const QUrl& file, const QByteArray& bytes);
  // Somebody else has written it, or could not.
  void say(const QUrl& file, bool saved);
  void clear();

 signals:
  void changed();

 private:
  QString text_;
  bool saved_ = false;
};

// The path of a file as a dialog gave it.
[[nodiscard]] QString pathOf(const QUrl& file);
// Why nothing can be written there, in words for people, as far as it can be seen.
[[nodiscard]] QString whyNotWritten(const QString& path);
