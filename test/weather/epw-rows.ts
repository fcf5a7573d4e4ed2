/** An EPW file of our own making for tests: a mild place whose every hour is the same but for what a test changes. */
export function epwText(
  change: (fields: string[], row: number) => string[] | null = (fields) => fields,
): string {
  const lines = [
    'LOCATION,Testham,-,IRL,made,000001,53.0,-7.5,0.0,80.0',
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,made for tests',
    'COMMENTS 2,',
    'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ];
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  let row = 0;
  days.forEach((count, month) => {
    for (let day = 1; day <= count; day++) {
      for (let hour = 1; hour <= 24; hour++) {
        const fields = change(epwRow(month + 1, day, hour), row++);
        if (fields !== null) lines.push(fields.join(','));
      }
    }
  });
  return `${lines.join('\n')}\n`;
}

/** One data row: 8 °C, dew point 5 °C, 300 W m⁻² by day round noon. */
export function epwRow(month: number, day: number, hour: number): string[] {
  const sun = hour >= 11 && hour <= 15 ? ['100', '50', '60'] : ['0', '0', '0'];
  const radiation = ['9999', '9999', '300', ...sun];
  const light = ['999999', '999999', '999999', '9999'];
  const rest = ['5', '5', '9999', '99999', '9', '999999999', '999', '.999', '999', '99', '999', '999', '99'];
  const front = ['1999', String(month), String(day), String(hour), '60', '?9', '8.0', '5.0', '81', '100300'];
  return [...front, ...radiation, ...light, '180', '3.0', ...rest];
}
