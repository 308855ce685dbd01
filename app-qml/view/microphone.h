#pragma once

#include <QAudioFormat>

#include <memory>

#include "app-qml/view/sound_recorder.h"

class QAudioSource;
class QIODevice;

// One channel of what a sound device delivers: of several the first. -1 to 1.
[[nodiscard]] std::vector<float> firstChannel(const QByteArray& bytes, const QAudioFormat& format);

// The system's usual microphone. The multimedia library is only asked once somebody wants to listen.
class Microphone : public SoundRecorder {
  Q_OBJECT

 public:
  Microphone();
  ~Microphone() override;
  [[nodiscard]] Start start() override;
  void stop() override;

 private:
  void read();

  std::unique_ptr<QAudioSource> source_;
  QIODevice* stream_ = nullptr;  // the source's
  QByteArray rest_;              // of a frame that has not come whole
};
