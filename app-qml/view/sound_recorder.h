#pragma once

#include <QObject>

#include <vector>

// What hears: the device's microphone, or what a test plays in its place. Nothing of it is ever written to a disk.
class SoundRecorder : public QObject {
  Q_OBJECT

 public:
  enum class Start { listening, noDevice, refused };

  // heard() follows until stop(), or broke().
  [[nodiscard]] virtual Start start() = 0;
  virtual void stop() = 0;

 signals:
  // The next samples of one channel, -1 to 1, and how many there are a second.
  void heard(const std::vector<float>& samples, double rate);
  // It was taken away, or another program has it.
  void broke();
};
