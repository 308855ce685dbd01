import QtQuick
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// What everything that can be pressed has in common: size for a finger, focus ring, Enter as well as Space, a name.
Basic.AbstractButton {
    id: control

    property bool ringInside: false

    implicitWidth: Math.max(Theme.touch, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(Theme.touch, implicitContentHeight + topPadding + bottomPadding)
    focusPolicy: Qt.StrongFocus
    activeFocusOnTab: true
    hoverEnabled: true
    font.pixelSize: Theme.type.body

    Accessible.name: text
    Keys.onReturnPressed: control.clicked()
    Keys.onEnterPressed: control.clicked()

    FocusRing {
        shown: control.visualFocus
        anchors.margins: control.ringInside ? 1 : -4
    }
}
