#pragma once

#include <QObject>
#include <QThreadPool>

#include <exception>
#include <functional>
#include <memory>
#include <type_traits>

// What a model has worked out beside the screen, one piece after the other. What is asked while something is being worked out waits for its end, and
// of all that is asked meanwhile only the newest is worked out. What a database throws there is thrown again on the owner's thread, where
// GuardedApplication makes the one fault on the screen of it. A model has it as its last member, so that it ends before what it reports to.
class BesideScreen {
 public:
  explicit BesideScreen(QObject& owner) : owner_(owner) { pool_.setMaxThreadCount(1); }
  ~BesideScreen() { pool_.waitForDone(); }
  BesideScreen(const BesideScreen&) = delete;
  BesideScreen& operator=(const BesideScreen&) = delete;

  [[nodiscard]] bool busy() const { return busy_; }

  // `make` runs on another thread and touches nothing of the owner that may change; `take` gets what it made, on the owner's thread.
  template <class Make, class Take>
  void work(Make make, Take take) {
    if (busy_) {
      next_ = [this, make, take] { work(make, take); };
      return;
    }
    busy_ = true;
    pool_.start([this, make, take] {
      using Made = std::invoke_result_t<const Make&>;
      std::shared_ptr<const Made> made;
      std::exception_ptr thrown;
      try {
        made = std::make_shared<const Made>(make());
      } catch (...) {  // not lost: see below
        thrown = std::current_exception();
      }
      QMetaObject::invokeMethod(
          &owner_,
          [this, take, made, thrown] {
            busy_ = false;
            if (const auto next = std::exchange(next_, nullptr)) next();
            if (thrown) std::rethrow_exception(thrown);
            take(*made);
          },
          Qt::QueuedConnection);
    });
  }

 private:
  QObject& owner_;
  bool busy_ = false;
  std::function<void()> next_;
  QThreadPool pool_;
};
