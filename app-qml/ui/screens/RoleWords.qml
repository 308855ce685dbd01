import QtQuick

// What the roles of a tablet at an event server are called, by their number.
QtObject {
    readonly property var titles: ["", qsTr("head of the room"), qsTr("desk"), qsTr("stringer"), qsTr("reader")]
    function title(role) { return titles[role] ?? ""; }
}
