#pragma once
// Two network namespaces with a cable between them. Without a name: the kernel takes them away with the last
// process in them, however the test ends.

#include <cstdint>
#include <string>

namespace weavelog::testing {

inline constexpr const char* kServerAddress = "10.231.7.1";
inline constexpr const char* kTabletAddress = "10.231.7.2";

class TwoRooms {
 public:
  /// Throws std::runtime_error with the reason where the machine does not allow it.
  TwoRooms();
  ~TwoRooms();
  TwoRooms(const TwoRooms&) = delete;
  TwoRooms& operator=(const TwoRooms&) = delete;

  /// While it lives, this thread and what it starts are in that room; then back in the one where it was.
  class Inside {
   public:
    explicit Inside(int space);
    ~Inside();
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;

   private:
    int back_;
  };
  [[nodiscard]] Inside at_server() const { return Inside(server_); }
  [[nodiscard]] Inside at_tablet() const { return Inside(tablet_); }

  /// Pulls the cable, or plugs it in again.
  void cut() const;
  void mend() const;
  /// What the tablet sends no longer arrives, while what the server sends still does; or the other way round.
  void deafen_server(bool deaf) const;
  void deafen_tablet(bool deaf) const;
  /// The cable carries so many kilobits a second.
  void slow(int kilobits) const;

 private:
  int home_ = -1, server_ = -1, tablet_ = -1;
};

}  // namespace weavelog::testing
