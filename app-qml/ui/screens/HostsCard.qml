pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The event servers and tablets that this tablet was paired with.
Card {
    id: card

    title: qsTr("Paired with")

    Repeater {
        model: ExchangeModel.hosts

        RowLayout {
            id: host
            required property var modelData
            spacing: Theme.tight

            ListRow {
                Layout.fillWidth: true
                text: host.modelData.name
                detail: host.modelData.address + ", " + words.title(host.modelData.role)
                chosen: host.modelData.chosen
                opens: !host.modelData.chosen
                onClicked: ExchangeModel.chooseHost(host.modelData.key)
                Icon {
                    visible: host.modelData.chosen
                    name: "check"
                    colour: Theme.colour.action
                }
            }
            IconAction {
                iconName: "close"
                text: qsTr("Forget %1").arg(host.modelData.name)
                onClicked: {
                    forget.key = host.modelData.key;
                    forget.title = text;
                    forget.open();
                }
            }
        }
    }
    RoleWords { id: words }
    Sheet {
        id: forget
        objectName: "forget"
        property string key

        Words {
            Layout.fillWidth: true
            text: qsTr("The players and jobs stay on this tablet. To exchange with it again you need a new code.")
        }
        ActionButton {
            objectName: "forgetNow"
            Layout.fillWidth: true
            kind: ActionButton.Danger
            text: qsTr("Forget it")
            onClicked: {
                forget.close();
                ExchangeModel.forgetHost(forget.key);
            }
        }
    }
}
