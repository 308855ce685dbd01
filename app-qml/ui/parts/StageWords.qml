pragma Singleton
import QtQuick

// What the stages of a job are called and how they are drawn, by their number in core/model/choices.h. In the words of
// the screens' language, so that a change of it reaches every page at once.
QtObject {
    readonly property var titles: [
        qsTr("Not here yet"), qsTr("Received"), qsTr("Inspected"), qsTr("Waiting for an answer"), qsTr("Cut out"),
        qsTr("On the machine"), qsTr("Strung"), qsTr("Checked"), qsTr("Stencilled"), qsTr("Ready"), qsTr("Collected"),
        qsTr("Put aside")
    ]
    readonly property var iconNames: [
        "tag", "in", "search", "question", "cut", "half", "strung", "check", "ink", "ready", "out", "stopped"
    ]

    // A stage of a newer version has no word here.
    function title(stage) { return titles[stage] ?? qsTr("Another stage"); }
    function iconName(stage) { return iconNames[stage] ?? "tag"; }
}
