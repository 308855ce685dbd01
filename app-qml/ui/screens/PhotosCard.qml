pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The pictures of a racket: small ones of those that lie here, a way to fetch the rest, and to more.
Card {
    id: card

    required property string book
    required property string job
    readonly property alias model: photos
    readonly property int held: Array.from(photos.photos).filter(one => one.state === PhotosModel.Here).length

    title: qsTr("Photos")
    detail: photos.photos.length === 0 ? qsTr("There is no picture of this racket yet.") : ""

    PhotosModel {
        id: photos
        book: card.book
        job: card.job
    }
    Flow {
        Layout.fillWidth: true
        visible: card.held > 0
        spacing: Theme.tight

        Repeater {
            // By number: a tile stays, and the focus on it, while another one comes.
            model: photos.photos.length

            TouchButton {
                id: tile
                required property int index
                readonly property var photo: photos.photos[index] ?? ({})
                objectName: "photo" + index
                visible: photo.state === PhotosModel.Here
                implicitWidth: 112
                implicitHeight: 112
                text: Listing.commas([qsTr("Photo %1").arg(index + 1), photo.note ?? "", photo.detail ?? ""])
                Accessible.description: picture.fault
                onClicked: large.show(index)

                background: Rectangle {
                    radius: Theme.radius
                    color: Theme.colour.raised
                    border.width: 1
                    border.color: Theme.colour.controlLine
                }
                contentItem: Item {
                    PhotoPicture {
                        id: picture
                        anchors.fill: parent
                        anchors.margins: 4
                        model: photos
                        content: tile.photo.content ?? ""
                        here: tile.photo.state === PhotosModel.Here
                    }
                    Icon {
                        anchors.centerIn: parent
                        visible: picture.fault.length > 0
                        name: "warning"
                        size: 32
                        colour: Theme.colour.ink
                    }
                }
            }
        }
    }
    Repeater {
        model: photos.photos.length

        ColumnLayout {
            id: absent
            required property int index
            readonly property var photo: photos.photos[index] ?? ({})
            readonly property bool asked: photo.state === PhotosModel.Waiting || photo.state === PhotosModel.Coming
            Layout.fillWidth: true
            visible: photo.state !== undefined && photo.state !== PhotosModel.Here
            spacing: Theme.tight

            Words {
                Layout.fillWidth: true
                text: qsTr("Photo %1: not on this tablet yet").arg(absent.index + 1)
            }
            Words {
                Layout.fillWidth: true
                visible: text.length > 0
                meaning: Words.Caption
                quiet: true
                text: Listing.commas([absent.photo.note ?? "", absent.photo.detail ?? ""])
            }
            Words {
                objectName: "photoFault" + absent.index
                Layout.fillWidth: true
                visible: text.length > 0
                text: absent.photo.fault ?? ""
            }
            ProgressLine {
                Layout.fillWidth: true
                visible: absent.asked
                text: absent.photo.state === PhotosModel.Coming ? qsTr("It is being fetched") : qsTr("Waiting for the event server")
                indeterminate: absent.photo.state !== PhotosModel.Coming
                value: absent.photo.progress ?? 0
            }
            ActionButton {
                objectName: "fetch" + absent.index
                Layout.fillWidth: true
                visible: !absent.asked
                kind: ActionButton.Secondary
                iconName: "in"
                text: qsTr("Fetch photo %1").arg(absent.index + 1)
                onClicked: photos.fetch(absent.photo.content)
            }
        }
    }
    ActionButton {
        objectName: "takePhotos"
        Layout.fillWidth: true
        visible: CameraModel.present
        kind: ActionButton.Secondary
        iconName: "camera"
        text: qsTr("Take a photo")
        onClicked: taking.show()
    }
    PhotoSheet {
        id: taking
        objectName: "takingPhotos"
        photos: card.model
    }
    ActionButton {
        objectName: "addPhoto"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        iconName: "plus"
        text: qsTr("Add a photo from a file")
        onClicked: choosing.open()
    }
    FileDialog {
        id: choosing
        nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG)")]
        onAccepted: photos.add(selectedFile, qsTr("Photo kept, without the place where it was taken"))
    }
    Sheet {
        id: large
        objectName: "largePhoto"

        property int index: 0
        readonly property var photo: photos.photos[index] ?? ({})

        function show(number) {
            index = number;
            open();
        }

        title: qsTr("Photo %1").arg(index + 1)

        PhotoPicture {
            id: whole
            objectName: "largePicture"
            readonly property real most: Math.max(160, (large.parent?.height ?? 0) - 260)
            Layout.fillWidth: true
            implicitHeight: ratio > 0 ? Math.min(width * ratio, most) : 0
            visible: fault.length === 0
            model: photos
            content: large.photo.content ?? ""
            here: large.opened && large.photo.state === PhotosModel.Here
            Accessible.role: Accessible.Graphic
            Accessible.name: Listing.commas([large.title, large.photo.note ?? ""])
        }
        Notice {
            objectName: "damagedPhoto"
            Layout.fillWidth: true
            visible: whole.fault.length > 0
            kind: Notice.Attention
            title: whole.fault
            text: qsTr("Add it again from where it came, or fetch it from the tablet on which it was taken.")
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: large.photo.note ?? ""
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            meaning: Words.Caption
            quiet: true
            text: large.photo.detail ?? ""
        }
    }
}
