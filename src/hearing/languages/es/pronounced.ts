// Spanish: words whose accent was taken off and tells what the rules miss. "A" is sounded so that it is no sound of thinking: "a la derecha".
export const PRONOUNCED = `
a a
atras ot@Os
aqui o1I
ahi oI
alli o$I
continua 1wntinVo
deshacer dxso4X@
dia dIo
dieciseis d$x4isEs
podria pwd@Io
podrias pwd@Ios
repetir @xpxtI@
seguir sxgI@
terminar tx@minO@
todavia twdobIo
veintidos bentidWs
veintiseis bentisEs
veintitres bentit@Xs
`;
