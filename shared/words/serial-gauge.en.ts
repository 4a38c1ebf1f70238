/** What is said about a gauge on a serial port. */
export const serialGaugeWords = {
  key: 'Serial port', heading: 'A gauge on a serial port',
  states: { none: 'No serial port here', closed: 'Not connected', opening: 'Connecting', open: 'Connected', lost: 'Cable lost', refused: 'Not opened' },
  told: {
    none: 'This browser gives no serial ports to a page. Use a browser that does, over a secure address, or let the gauge type like a keyboard.',
    closed: 'Choose the port the gauge is plugged into. It is remembered on this kiosk.',
    opening: 'The port is being opened.',
    open: 'Each line the gauge sends is taken as a reading, as if it had been typed.',
    lost: 'The gauge does not answer any more. It is tried again every two seconds; check the cable. Readings may be typed meanwhile.',
    refused: 'The port could not be opened. Another program may be using it, or the settings may be another gauge’s.',
  },
  baud: 'Speed, baud', dataBits: 'Data bits', parity: 'Parity', parities: { none: 'none', even: 'even', odd: 'odd' }, stopBits: 'Stop bits',
  choose: 'Choose the port', close: 'Close the port', done: 'Done',
  faults: {
    empty: 'An empty line came from the gauge.', noNumber: 'The gauge sent a line without the reading.', otherUnit: 'The gauge sent another unit than its own.', unclear: 'The gauge sent a number that is not clear.',
  },
  sent: (line: string) => `It sent “${line}”. Nothing was taken. How its line is read is said on its page, at Gauges.`,
};
