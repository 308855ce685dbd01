pragma Singleton
import QtQuick

// How high the strip is at the foot of the window in which it is said what was just done: pages end above it, so that it covers nothing
// that is to be read or tapped. 0 while nothing is said.
QtObject {
    property real height: 0
}
