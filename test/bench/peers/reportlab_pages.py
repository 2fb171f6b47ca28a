# The same pages by a general-purpose typesetter from Debian (python3-reportlab), its own calls for every line and text.
import json
import sys
import time

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen import canvas

pages_file, regular, bold, out = sys.argv[1:5]
book = json.load(open(pages_file))
started = time.perf_counter()
pdfmetrics.registerFont(TTFont('regular', regular))
pdfmetrics.registerFont(TTFont('bold', bold))
c = canvas.Canvas(out, pagesize=(book['width'], book['height']), pageCompression=1)


def draw(operators):
    path = c.beginPath()
    for line in operators:
        *numbers, name = line.split(' ')
        if name == 'd':
            c.setDash([float(n) for n in ' '.join(numbers[:-1]).strip('[]').split()], 0)
        elif name == 'J':
            c.setLineCap(int(numbers[0]))
        elif name == 'w':
            c.setLineWidth(float(numbers[0]))
        elif name == 'rg':
            c.setFillColorRGB(*[float(n) for n in numbers])
        elif name == 'G':
            c.setStrokeGray(float(numbers[0]))
        elif name == 'm':
            path.moveTo(*[float(n) for n in numbers])
        elif name == 'l':
            path.lineTo(*[float(n) for n in numbers])
        elif name == 'c':
            path.curveTo(*[float(n) for n in numbers])
        elif name == 'h':
            path.close()
        elif name in ('S', 'f'):
            c.drawPath(path, stroke=name == 'S', fill=name == 'f')
            path = c.beginPath()


for groups in book['pages']:
    for group in groups:
        c.saveState()
        c.translate(group['x'], group['y'])
        c.scale(group['scale'], group['scale'])
        for operators in group['drawings']:
            c.saveState()
            draw(operators)
            c.restoreState()
        for text, x, y, size, weight, gray, angle in group['texts']:
            c.setFont(weight, size)
            c.setFillGray(gray)
            if angle:
                c.saveState()
                c.translate(x, y)
                c.rotate(angle)
                c.drawString(0, 0, text)
                c.restoreState()
            else:
                c.drawString(x, y, text)
        c.restoreState()
    c.showPage()
c.save()
print(time.perf_counter() - started)
