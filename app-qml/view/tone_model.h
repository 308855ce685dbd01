#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QUrl>

#include <memory>
#include <vector>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/sound_recorder.h"
#include "app-qml/view/work.h"
#include "core/bed/listen.h"

class QQmlEngine;
class QJSEngine;

// Listens to a racket that is tapped, or reads a recording, and finds the tone of its bed; where it is not sure it says so in place of a number. What
// is heard stays in memory and is forgotten once the tone is found.
class ToneModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(State state READ state NOTIFY changed)
  // While it listens: how loud it is, 0 to 1 of a scale of 60 dB, what that means, and the seconds that are left.
  Q_PROPERTY(double loudness READ loudness NOTIFY levelChanged)
  Q_PROPERTY(Level level READ level NOTIFY levelChanged)
  Q_PROPERTY(int secondsLeft READ secondsLeft NOTIFY levelChanged)
  // The tone in Hz with a decimal, as figures are typed; "": none is known.
  Q_PROPERTY(QString hertz READ hertz NOTIFY changed)
  // Relative standard deviation of the tone.
  Q_PROPERTY(double doubt READ doubt NOTIFY changed)
  // The tone with its band and how sure that is; or why there is none, and what to do.
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString text READ text NOTIFY changed)
  // There is no microphone, or it can't be used: only a file helps.
  Q_PROPERTY(bool deaf READ deaf NOTIFY changed)

 public:
  enum State { Idle, Listening, Finding, Known, Unknown };
  Q_ENUM(State)
  enum Level { Silent, Fine, Clipped };
  Q_ENUM(Level)

  ToneModel(Work& work, std::unique_ptr<SoundRecorder> recorder, QObject* parent = nullptr);
  // With the device's microphone.
  static ToneModel* create(QQmlEngine* engine, QJSEngine* script);

  // Some seconds from now; `expected` is the tone in Hz that the racket is reckoned to have, 0: none.
  Q_INVOKABLE void listen(double expected);
  // Ends it sooner: what was heard so far is looked at.
  Q_INVOKABLE void enough();
  // A WAV file in place of the microphone.
  Q_INVOKABLE void hearFile(const QUrl& file, double expected);
  // Forgets what was found, and stops listening.
  Q_INVOKABLE void forget();

  [[nodiscard]] State state() const { return state_; }
  [[nodiscard]] double loudness() const { return loudness_; }
  [[nodiscard]] Level level() const { return level_; }
  [[nodiscard]] int secondsLeft() const;
  [[nodiscard]] QString hertz() const { return hertz_; }
  [[nodiscard]] double doubt() const { return doubt_; }
  [[nodiscard]] QString title() const { return title_; }
  [[nodiscard]] QString text() const { return text_; }
  [[nodiscard]] bool deaf() const { return deaf_; }

 signals:
  void changed();
  void levelChanged();
  // A tone was found.
  void found();

 private:
  void take(const std::vector<float>& samples, double rate);
  void broken(const QString& why);
  void find(std::vector<float> samples, double rate);
  void say(const weavelog::Outcome<weavelog::HeardTone>& heard);
  void unknown(const QString& title, const QString& text);

  Work& work_;
  std::unique_ptr<SoundRecorder> recorder_;
  QTimer silence_;  // nothing at all comes
  State state_ = Idle;
  std::vector<float> samples_;
  double rate_ = 0, expected_ = 0, loudness_ = 0, doubt_ = 0;
  Level level_ = Silent;
  bool deaf_ = false;
  int asked_ = 0;  // only the newest question is answered
  QString hertz_, title_, text_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
