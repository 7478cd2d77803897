import { sentences } from '../sentence.ts';

/** Why a stream that ran has ended, by the code of the error. */
export const SOURCE_ERRORS = sentences('source-error', {
  lost: 'It was gone for too long.',
  restarted:
    'It counts anew, as after a restart or as another sensor would: what it sends now has no place beside what came before.',
  untold: 'It was gone for a while, and it numbers nothing that tells how much is missing.',
});

/** Why a device gives nothing, and what to do about it: by the code of the error. */
export const DEVICE_ERRORS = sentences('device-error', {
  'insecure-page':
    'This page came over plain http, and browsers keep sensors from such pages. Open it over https, or from this machine.',
  'no-interface': 'This browser cannot reach this kind of sensor. Use another browser, or another kind of sensor.',
  'no-radio': 'There is no Bluetooth here, or it is switched off. Switch it on and choose again.',
  'needs-press': 'The browser asks for a sensor only after a press. Press the button once more.',
  'not-chosen': 'No device was chosen. Choose again; switch Bluetooth and the device on if it is not in the list.',
  'not-allowed': 'The browser may not use this sensor. Allow it in the settings of this site and choose again.',
  'not-found': 'The device is not in reach. Switch it on, bring it near and connect again.',
  refused: 'The device did not connect. It may be connected elsewhere: end that, and connect again.',
  'no-answer': 'The device did not answer in time. Switch it off and on, and connect again.',
  'service-missing': 'This device does not have what its description names. Choose the description that fits it.',
  'no-header':
    'No line came that names the columns. Switch the sensor off and on and connect it again, or describe its columns.',
  'in-use': 'Another page or program holds this port. Close that, and connect again.',
  'not-open': 'The device is not connected. Connect it first.',
  lost: 'The connection broke. All that had arrived is kept; connect again.',
  'no-sensor': 'No motion sensor is heard on this device. Use a phone or tablet that has one, or another sensor.',
  failed: 'The sensor failed for a reason that has no name here. Connect again, or use another sensor.',
});
